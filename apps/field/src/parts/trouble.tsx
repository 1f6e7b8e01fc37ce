/** Why a form was not taken. It comes into view: the press may have been far above it. */
export function Trouble({ children }: { readonly children: string }) {
  return (
    <p class="trouble" role="alert" ref={(shown) => shown?.scrollIntoView({ block: 'nearest' })}>
      {children}
    </p>
  )
}

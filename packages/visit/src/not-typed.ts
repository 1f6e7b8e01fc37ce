/** Who entered an event that nobody typed, in place of a person's name: such an event is no act to undo, and a visit hands it back to no system. */
export const CARRIED_OVER = 'carried over from the system'
export const TRADE_DEFAULT = 'usual in the trade, not checked'
export const MOVED_ALONG = 'came along with a visit that was moved'

const NOT_TYPED: readonly string[] = [CARRIED_OVER, TRADE_DEFAULT, MOVED_ALONG]

/** Whether an event names a person, or nobody, as the one who entered it. */
export const isTyped = ({ by }: { readonly by?: string | undefined }): boolean =>
  by === undefined || !NOT_TYPED.includes(by)

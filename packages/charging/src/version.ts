/** Version of the rules. It changes whenever an answer could. */
export const VERSION = '0.3.0'

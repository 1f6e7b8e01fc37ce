export const APP = { 'en-GB': 'es' } as const

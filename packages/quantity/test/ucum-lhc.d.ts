/** The part of the oracle that the tests call; it ships without types. */
declare module '@lhncbc/ucum-lhc' {
  interface Conversion {
    readonly status: 'succeeded' | 'failed' | 'error'
    readonly toVal: number | null
  }
  interface Converter {
    convertUnitTo(fromCode: string, value: number, toCode: string): Conversion
  }
  export const UcumLhcUtils: { getInstance(): Converter }
}

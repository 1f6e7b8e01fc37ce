/** The part of pdfmake 0.3 that is used; it comes without types. The same in Node and in a browser. */
declare module 'pdfmake' {
  interface PdfMake {
    readonly virtualfs: { writeFileSync(name: string, content: string, encoding: 'base64'): void }
    setFonts(fonts: Readonly<Record<string, Readonly<Record<string, string>>>>): void
    setTableLayouts(layouts: Readonly<Record<string, object>>): void
    setUrlAccessPolicy(allows: (url: string) => boolean): void
    /** Node only. */
    setLocalAccessPolicy?(allows: (path: string) => boolean): void
    createPdf(definition: object): { getBuffer(): Promise<Uint8Array> }
  }
  const pdfmake: PdfMake
  export = pdfmake
}

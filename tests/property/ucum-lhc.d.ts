/** The part of the package that the tests use; it comes without types. */
declare module "@lhncbc/ucum-lhc" {
  export const UcumLhcUtils: {
    getInstance(): {
      convertUnitTo(
        from: string,
        value: number,
        to: string,
      ): { readonly status: string; readonly toVal: number | null };
    };
  };
}

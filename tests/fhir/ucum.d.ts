declare module '@lhncbc/ucum-lhc' {
  interface UnitAnswer {
    readonly status: 'valid' | 'invalid' | 'error';
  }
  const ucum: {
    readonly UcumLhcUtils: { getInstance(): { validateUnitString(unit: string): UnitAnswer } };
  };
  export default ucum;
}

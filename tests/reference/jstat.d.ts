/** The part of jstat, a general-purpose statistics library without types, that the tests compare with. */
declare module 'jstat' {
  interface Continuous {
    cdf(x: number, a: number, b: number): number;
    inv(p: number, a: number, b: number): number;
  }
  interface OneParameter {
    cdf(x: number, a: number): number;
    inv(p: number, a: number): number;
  }
  interface Library {
    readonly beta: Continuous;
    readonly normal: Continuous;
    readonly centralF: Continuous;
    readonly studentt: OneParameter;
    readonly chisquare: OneParameter;
    readonly binomial: { cdf(k: number, n: number, p: number): number; pdf(k: number, n: number, p: number): number };
    gammaln(x: number): number;
    lowRegGamma(a: number, x: number): number;
  }
  const library: Library;
  export default library;
}

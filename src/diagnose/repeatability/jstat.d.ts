declare module 'jstat' {
  interface Distribution {
    inv(p: number, dof: number): number;
    cdf(x: number, dof: number): number;
  }
  const library: {
    readonly jStat: {
      readonly chisquare: Distribution;
      readonly studentt: Distribution;
      readonly gammafn: (x: number) => number;
      readonly gammaln: (x: number) => number;
    };
  };
  export default library;
}

namespace ShopDays.Times.Regression;

/// <summary>One row of a regression in blocks: what is observed is the sum of some terms, each times its figure, and noise of standard deviation s.</summary>
/// <param name="Block">The block whose own terms it has.</param>
/// <param name="Own">The figures of the block's own terms.</param>
/// <param name="Common">The figures of the terms that all blocks share.</param>
/// <param name="Right">What is observed.</param>
/// <param name="Weight">How much it counts: 1 for a whole observation, less for one that has aged.</param>
internal sealed record RegressionRow(int Block, double[] Own, double[] Common, double Right, double Weight = 1);

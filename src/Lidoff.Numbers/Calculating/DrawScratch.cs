namespace Lidoff.Numbers.Calculating;

/// <summary>The columns one worker draws into, used again for every block.</summary>
internal sealed record DrawScratch(double[] Columns, double[] Identity, double[] First, double[] Second, double[] Spare);

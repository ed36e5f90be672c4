namespace Lidoff.Seeing.Boards;

/// <summary>Which single sightings or known lengths a solution would rather be without.</summary>
internal static class BoardBlunders
{
    /// <summary>
    /// By how much the cost would fall without a sighting, χ² of two degrees: beyond 4.5² chance comes to it once in 25,000, so that a
    /// board of fifty sightings is wrongly suspected once in five hundred.
    /// </summary>
    public const double Limit = 20.25;

    /// <summary>The same for a known length, χ² of one degree: three standard uncertainties.</summary>
    public const double ReferenceLimit = 9;

    // Below this part of its own weight the others say nothing about a sighting.
    private const double LeastRedundancy = 1e-3;

    /// <summary>The fall without each sighting: rᵀ(I − H)⁻¹r with H the sighting's share of its own prediction. Zero where nothing else speaks of it.</summary>
    public static IReadOnlyList<double> Falls(BoardSolution solution) =>
    [
        .. solution.Problem.Sightings.Select(sighting =>
        {
            var (x, y) = solution.Problem.Rows(sighting, solution.State);
            var (xx, xy, yy) = (1 - solution.Between(x, x), -solution.Between(x, y), 1 - solution.Between(y, y));
            var d = (xx * yy) - (xy * xy);
            // One direction of the two may be untested (a landmark of two pictures): then the tested one alone speaks.
            if (xx + yy < LeastRedundancy) return 0;
            if (d < LeastRedundancy * (xx + yy) * (xx + yy) / 4) return ((x.Rest * x.Rest) + (y.Rest * y.Rest)) / (xx + yy);
            return ((yy * x.Rest * x.Rest) - (2 * xy * x.Rest * y.Rest) + (xx * y.Rest * y.Rest)) / d;
        }),
    ];

    /// <summary>The fall without each known length.</summary>
    public static IReadOnlyList<double> ReferenceFalls(BoardSolution solution) =>
    [
        .. solution.Problem.References.Select(reference =>
        {
            var row = solution.Problem.Row(reference, solution.State);
            var own = 1 - solution.Between(row, row);
            return own < LeastRedundancy ? 0 : row.Rest * row.Rest / own;
        }),
    ];
}

namespace Lidoff.Seeing.Measuring;

/// <summary>The warning codes of <c>lidoff measure</c>, in the order they are printed.</summary>
public static class WarningCodes
{
    /// <summary>Target and reference stand at different heights.</summary>
    public const string OtherPlane = "other-plane";

    /// <summary>The scale differs with direction.</summary>
    public const string UnequalAxes = "unequal-axes";

    /// <summary>The picture is a mirror image.</summary>
    public const string Mirrored = "mirrored";

    /// <summary>The target is much longer than the reference, whose click error it multiplies.</summary>
    public const string ShortReference = "short-reference";

    /// <summary>The scale changes with the distance from the middle.</summary>
    public const string Lens = "lens";

    /// <summary>The scale changes across the picture: the camera looked at a slant.</summary>
    public const string Tilt = "tilt";

    /// <summary>References contradict one another by more than their errors.</summary>
    public const string ReferenceDisagrees = "reference-disagrees";

    /// <summary>All codes, in the order they are printed.</summary>
    public static IReadOnlyList<string> All { get; } = [OtherPlane, UnequalAxes, Mirrored, ShortReference, Lens, Tilt, ReferenceDisagrees];
}

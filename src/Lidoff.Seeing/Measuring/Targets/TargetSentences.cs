using System.Globalization;
using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Measuring.Targets;

/// <summary>Every sentence a person can see about targets.</summary>
public static class TargetSentences
{
    /// <summary>Nothing was found.</summary>
    public static Fault None { get; } = new(
        "target",
        "a checkerboard or a dot grid",
        "No checkerboard and no square grid of dots was found. Three by four inner corners of squares, or four by four dots, must be seen, each square or gap at least a three-hundredth of the picture's long side wide.");

    /// <summary>It is bent.</summary>
    /// <param name="steps">What its parts are off a flat grid, as a share of the pitch.</param>
    /// <param name="across">Columns or rows, whichever are more.</param>
    public static string NotFlat(double steps, int across) => Text(
        $"The target is not flat, or the lens bends as no simple one does: its parts lie {100 * steps:0.##} % of a pitch off a flat grid ({1000 * steps:0} µm where the pitch is 1 mm), and what does not show is about ten times as much over its {across} places. Press it flat under glass, or show a smaller part of it.");

    /// <summary>What was found, without a pitch.</summary>
    public static string Seen(FoundTarget found) => found.Pattern == TargetPattern.Checker
        ? Text($"A checkerboard: {found.Places.Count} corners of {found.Columns} × {found.Rows}, {found.StepPx:0.#} px from one to the next, each within {found.RestPx:0.##} px of a flat grid.")
        : Text($"A dot grid: {found.Places.Count} dots of {found.Columns} × {found.Rows}, {found.StepPx:0.#} px from one to the next, each within {found.RestPx:0.##} px of a flat grid.");

    /// <summary>The pitch is asked for.</summary>
    public static string PitchOpen(FoundTarget found) => Seen(found) + " Give pitch_mm, the distance from one to the next.";

    /// <summary>What was found, with its pitch: what is left in µm, and what it says of the lens.</summary>
    public static IReadOnlyList<string> Found(FoundTarget found, double pitchMm) => [Seen(found), Rest(found, pitchMm), Lens(found)];

    /// <summary>What is left, in µm.</summary>
    public static string Rest(FoundTarget found, double pitchMm) => Text($"At a pitch of {pitchMm:0.######} mm each is within {1000 * pitchMm * found.RestSteps:0.#} µm of it (one standard deviation).");

    /// <summary>What it says of the lens.</summary>
    public static string Lens(FoundTarget found) => found.LensKnown
        ? Text($"The lens moves the end of the long side by {100 * found.Bend:0.##} ± {100 * found.BendU:0.##} %; that is taken out.")
        : Text($"The target fills {100 * found.Fills:0} % of the picture: the lens stays unknown ({100 * found.Bend:0.#} ± {100 * found.BendU:0.#} % at the end of the long side), so lengths far from the target carry more doubt.");

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}

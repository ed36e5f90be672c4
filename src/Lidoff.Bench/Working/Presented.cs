namespace Lidoff.Bench.Working;

/// <summary>What a main window shows of a picture.</summary>
/// <param name="Sha256">Which picture.</param>
/// <param name="X">Middle of the part in view, px of the picture.</param>
/// <param name="Y">Middle of the part in view, px of the picture.</param>
/// <param name="Width">Width of the part in view, px of the picture; 0 for the whole picture.</param>
/// <param name="Selected">Designator of the selected spot; empty for none.</param>
public sealed record Presented(string Sha256, double X, double Y, double Width, string Selected);

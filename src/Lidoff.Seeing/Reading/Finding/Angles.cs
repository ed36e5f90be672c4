namespace Lidoff.Seeing.Reading.Finding;

/// <summary>Angles in radians, clockwise as seen.</summary>
internal static class Angles
{
    /// <summary>The same angle from -π (left out) to π.</summary>
    public static double Whole(double angle)
    {
        var turns = Math.Round(angle / (2 * Math.PI));
        var rest = angle - (turns * 2 * Math.PI);
        return rest <= -Math.PI ? rest + (2 * Math.PI) : rest;
    }

    /// <summary>How far apart two directions are, 0 to π.</summary>
    public static double Between(double a, double b) => Math.Abs(Whole(a - b));
}

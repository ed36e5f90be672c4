using System.Globalization;

namespace Lidoff.Weighing.Blocks;

/// <summary>What supply tree and blocks say of what does not fit.</summary>
public static class BlockSentences
{
    /// <summary>Stands for the role of a rail's unknown source.</summary>
    public const string UnknownSource = "not known what makes it";

    /// <summary>Parts that feed each other in a circle.</summary>
    public static string Circle(string spot) => $"{spot} feeds itself over other parts: one of these rails is drawn the wrong way round, or it is a charging path.";

    /// <summary>A supply that nobody drew.</summary>
    public static string NoRail(string spot, double v) => string.Create(CultureInfo.InvariantCulture, $"{spot} reads {v:0.###} V at its pin, and no rail that feeds it was drawn.");

    /// <summary>A supply that is not its rail's.</summary>
    public static string OtherVoltage(string spot, double v, string rail, double railV) =>
        string.Create(CultureInfo.InvariantCulture, $"{spot} reads {v:0.###} V at its pin, and {rail} that feeds it is drawn with {railV:0.###} V.");
}

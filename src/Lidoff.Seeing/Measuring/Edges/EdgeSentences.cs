using System.Globalization;

namespace Lidoff.Seeing.Measuring.Edges;

/// <summary>Sentences about fitted edges.</summary>
public static class EdgeSentences
{
    /// <summary>What a side of a body is called; sides count from the first clicked corner.</summary>
    public static string Side(int side) => side switch { 0 => "the first side", 1 => "the second side", 2 => "the third side", _ => "the fourth side" };

    /// <summary>What an end of a length is called.</summary>
    public const string From = "the first end", To = "the other end";

    /// <summary>What a circle is called.</summary>
    public const string Circle = "the circle";

    /// <summary>Too little of it lies in the picture, or it is too short.</summary>
    public static string TooShort(string place) => $"{Upper(place)} stays as clicked: it is too short in the picture, or too close to its rim, to look for an edge.";

    /// <summary>The picture breaks off.</summary>
    public static string NotRead(string place) => $"{Upper(place)} stays as clicked: the picture cannot be read to its end.";

    /// <summary>No edge near.</summary>
    public static string NoEdge(string place, double reach) => $"{Upper(place)} stays as clicked: no edge runs along it within {Px(reach)} px. Click closer to it, or look for light from another side.";

    /// <summary>Several edges near.</summary>
    public static string Compete(string place, IReadOnlyList<double> at) =>
        $"{Upper(place)} stays as clicked: several edges compete there ({string.Join(", ", at.Select(Where))}), such as a body, its shadow and its pads. Click closer to the one that is meant.";

    /// <summary>One edge near, which tells no more than the click.</summary>
    public static string NoBetter(string place, double at) =>
        $"{Upper(place)} stays as clicked: the edge there ({Where(at)}) leaves about as much open as the click does. It is soft, or too far off to be surely the one that is meant. Click closer to it, or take a sharper picture.";

    private static string Where(double px) => Math.Abs(px) < 0.05 ? "on it" : $"{Px(Math.Abs(px))} px {(px > 0 ? "outside" : "inside")}";

    private static string Upper(string place) => char.ToUpperInvariant(place[0]) + place[1..];

    private static string Px(double px) => px.ToString("0.0", CultureInfo.InvariantCulture);
}

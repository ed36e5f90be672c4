using System.Globalization;
using Lidoff.Seeing;

namespace Lidoff.Telling.Drawing.Labelling;

/// <summary>What a person reads in and about a labelled picture.</summary>
public static class LabelledSentences
{
    /// <summary>A spot whose point lies outside.</summary>
    public static string Outside(PictureSpot spot, int width, int height) => string.Create(
        CultureInfo.InvariantCulture,
        $"{SeeingSentences.Quoted(spot.Spot)} points at {spot.At.X:0.#}, {spot.At.Y:0.#}, outside the picture of {width} × {height} px; it is not drawn.");

    /// <summary>More spots than a picture can carry.</summary>
    public static string TooMany(int spots, int most) => string.Create(CultureInfo.InvariantCulture, $"The picture has {spots} spots and is drawn with the first {most}.");

    /// <summary>A scale by which a bar would be no length at all.</summary>
    public static string NoBar() => "The picture's scale is not a usable number, so it has no scale bar.";

    /// <summary>Beside the bar: that the scale is the board's, and how well it is known where the eye could tell; empty where there is nothing to say.</summary>
    public static string ScaleWords(BarScale? scale) => scale switch
    {
        { Doubtful: true } => (scale.ByBoard ? "scale by the board, known to " : "scale known to ") + Doubt(scale.RelativeU),
        { ByBoard: true } => "scale by the board",
        _ => "",
    };

    /// <summary>A relative doubt, "± 2.4 %".</summary>
    public static string Doubt(double relativeU) => string.Create(CultureInfo.InvariantCulture, $"± {(relativeU * 100 < 9.5 ? Math.Round(relativeU * 100, 1) : Math.Round(relativeU * 100)):0.#} %");

    /// <summary>Instead of the bar.</summary>
    public static string NoScale() => "no scale known";

    /// <summary>What somebody hears who cannot see it.</summary>
    public static string Alternative(string title, int spots, string bar) =>
        (title.Length > 0 ? title : "A picture") + string.Create(CultureInfo.InvariantCulture, $" with {(spots == 1 ? "one label" : $"{spots} labels")} on leader lines") + (bar.Length > 0 ? " and a scale bar of " + bar : "");
}

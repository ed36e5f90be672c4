using Lidoff.Bench.Working;
using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;

namespace Lidoff.Bench.Rooms.See.Typed;

/// <summary>A landmark as it is typed at its place: its name, the same in every picture that shows it.</summary>
public sealed record LandmarkTyped(string Name)
{
    // The middle of a small hole is met to about a pixel and a half by hand, however near one looks; see LandmarkKind.
    private const double LeastPx = 1.5;

    /// <summary>Reads the line; names are compared to the letter, so that blanks around them are taken away.</summary>
    public static Outcome<LandmarkTyped> Read(string? text, IEnumerable<string> here)
    {
        var name = (text ?? "").Trim();
        if (name.Length == 0) return SeeSentences.LandmarkMissing;
        return here.Contains(name, StringComparer.Ordinal) ? SeeSentences.LandmarkHere(name) : new LandmarkTyped(name);
    }

    /// <summary>The line to store; <paramref name="clickPx"/> is how finely the place was met, px.</summary>
    public Line Line(string specimen, string sha256, PicturePoint at, double clickPx) =>
        Working.Line.Of("landmark").Set("specimen", specimen).Set("landmark", Name).Set("picture", sha256).Set("point", at.X, at.Y).Set("u_px", Math.Max(LeastPx, clickPx));
}

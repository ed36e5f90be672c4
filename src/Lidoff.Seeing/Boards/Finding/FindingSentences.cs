using System.Globalization;

namespace Lidoff.Seeing.Boards.Finding;

/// <summary>Sentences of pictures laid on one another by a machine.</summary>
public static class FindingSentences
{
    /// <summary>Too little to go by.</summary>
    public static string FewMarks(string picture, int found) =>
        $"{SeeingSentences.Quoted(picture)} shows {Count(found)} that stand out, and seven are needed. Take it nearer, sharper, or with light from all sides; or point at landmarks by hand (K).";

    /// <summary>Two boards, or too little of one.</summary>
    public static string NotOneBoard(string first, string second, int agree, int of) =>
        $"{SeeingSentences.Quoted(first)} and {SeeingSentences.Quoted(second)} do not lie on one board: {(agree == 0 ? "none" : agree.ToString(CultureInfo.InvariantCulture))} of {of} holes agree, which accident does as well. "
        + "They may show different boards, or too few of the same holes. Nothing was changed; landmarks can be pointed at by hand (K).";

    /// <summary>A board that fits in several ways.</summary>
    public static string SeveralWays(string first, string second, IReadOnlyList<(int Agree, bool Mirrored, double Turn)> ways) =>
        $"{SeeingSentences.Quoted(second)} fits on {SeeingSentences.Quoted(first)} in {ways.Count} ways: "
        + string.Join(", ", ways.Select(way => string.Create(CultureInfo.InvariantCulture, $"{(way.Mirrored ? "from the other side" : "from the same side")} turned by {Math.Round(way.Turn):0}° ({way.Agree} holes)")))
        + ". Its holes are symmetric, or something beside the board is the same in both, so none was chosen. Say which side each picture shows, or point at one hole that has no twin in both (K).";

    /// <summary>One side, flipped.</summary>
    public static string Flipped(string first, string second) =>
        $"{SeeingSentences.Quoted(second)} shows the same side as {SeeingSentences.Quoted(first)}, mirrored: one of the two was flipped before it came here.";

    /// <summary>Not as noted.</summary>
    public static string AgainstSides(string first, string second, bool mirrored) => mirrored
        ? $"{SeeingSentences.Quoted(second)} lies mirrored to {SeeingSentences.Quoted(first)}, although both are noted as one side: one of them shows the other side, or was mirrored before it came here."
        : $"{SeeingSentences.Quoted(second)} lies on {SeeingSentences.Quoted(first)} as from the same side, although they are noted as two: one of the notes is wrong, or one picture was mirrored before it came here.";

    /// <summary>Too little against what was noted.</summary>
    public static string OnlyAgainstSides(string first, string second, bool mirrored, int agree) =>
        $"{SeeingSentences.Quoted(second)} fits on {SeeingSentences.Quoted(first)} only {(mirrored ? "mirrored" : "as from the same side")} ({agree.ToString(CultureInfo.InvariantCulture)} holes), although they are noted as {(mirrored ? "one side" : "two sides")}, "
        + "and that is too little to go against the notes: something beside the board may be the same in both. Nothing was changed; correct the side where it is wrong, or point at landmarks by hand (K).";

    /// <summary>One side by its holes, not by its looks.</summary>
    public static string UnlikeSides(string first, string second, int agree) =>
        $"{SeeingSentences.Quoted(second)} fits on {SeeingSentences.Quoted(first)} as from the same side ({agree.ToString(CultureInfo.InvariantCulture)} holes), but the two do not look alike there: something beside the board may be the same in both. "
        + "Nothing was changed; say which side each picture shows, or point at landmarks by hand (K).";

    /// <summary>Turned.</summary>
    public static string Turned(string second, string first, double degrees) => string.Create(
        CultureInfo.InvariantCulture, $"{SeeingSentences.Quoted(second)} is turned by {Math.Round(Math.Abs(degrees)):0}° {(degrees > 0 ? "clockwise" : "anticlockwise")} against {SeeingSentences.Quoted(first)}.");

    private static string Count(int found) => found == 0 ? "no holes" : found == 1 ? "one hole" : found.ToString(CultureInfo.InvariantCulture) + " holes";
}

using Lidoff.Weighing.Modelling;
using Lidoff.Weighing.Moves;

namespace Lidoff.Weighing.Questions;

/// <summary>Reads what a question is tied to.</summary>
internal static class Ties
{
    private const string ClaimWord = "claim:";
    private const double WorthNaming = 0.02;

    /// <summary>The name of the claim a reference means; empty where it means something else.</summary>
    public static string Claim(string reference) => reference.StartsWith(ClaimWord, StringComparison.Ordinal) ? reference[ClaimWord.Length..] : "";

    /// <summary>What a reference says today.</summary>
    public static TieAnswer Of(string reference, MoveBench bench) => Claim(reference) is { Length: > 0 } claim ? OfClaim(reference, claim, bench) : OfValue(reference, bench);

    private static TieAnswer OfClaim(string reference, string name, MoveBench bench)
    {
        if (bench.Claim(name) is not { } claim) return new(reference, "", "", "", Evidence.Grading.Grade.E0, false, WeighingSentences.NoClaim(name), []);
        return new(reference, "", claim.Text, claim.Stale ? WeighingSentences.StaleClaim(name) : "", claim.Grade, !claim.Unsupported, claim.Unsupported ? WeighingSentences.UnsupportedClaim(name) : "", claim.RestsOn);
    }

    private static TieAnswer OfValue(string reference, MoveBench bench)
    {
        var value = bench.Model.Value(reference);
        if (value.Missing is { } missing) return new(reference, value.Says, "", "", value.Grade, false, missing, value.RestsOn);
        // A name that is a guess yet, "not in any list" among them, leaves the question open.
        var decided = value.Name != IdentityAnswer.Undecided && (value.Number is not null || value.Grade > Evidence.Grading.Grade.E0);
        return new(reference, value.Says, ValueText.Print(value), value.Number is null ? Rivals(reference, bench) : ValueText.Interval(value), value.Grade, decided, "", value.RestsOn);
    }

    /// <summary>The other names that stay possible, likeliest first, with their odds.</summary>
    private static string Rivals(string reference, MoveBench bench)
    {
        if (!reference.StartsWith("part:", StringComparison.Ordinal)) return "";
        var answer = bench.Model.Identity(reference["part:".Length..]);
        if (!answer.Asked) return "";
        var rivals = answer.Joint.States.Zip(answer.Joint.P).Where(pair => pair.First != answer.Says && pair.Second >= WorthNaming)
            .OrderByDescending(pair => pair.Second).ThenBy(pair => pair.First, StringComparer.Ordinal).Take(3)
            .Select(pair => $"{pair.First} {ValueText.Percent(pair.Second)}").ToList();
        return rivals.Count == 0 ? "" : "or " + string.Join(", ", rivals);
    }
}

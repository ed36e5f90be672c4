using Lidoff.Numbers.Failing;

namespace Lidoff.Bench.Typing;

/// <summary>What is said beside fields that several rooms share.</summary>
public static class TypingSentences
{
    private const string Forms = "R1, U3, C2, length:U1:long side, body:U1:width, pitch:U1, mark:U1 or mass:whole";

    /// <summary>No reference where one is needed.</summary>
    public static Fault NoReference { get; } = new("reference", "a reference", $"Write what it leans on: {Forms}.");

    /// <summary>A text that refers to nothing.</summary>
    public static Fault UnknownReference(string typed) => new("reference", "a reference", $"{Showing.Shown.Quoted(typed)} names nothing in this dossier, and is no reference to something still to come. Write {Forms}.");

    /// <summary>A short name that several things have.</summary>
    public static Fault SeveralReferences(string typed, IEnumerable<string> meant) => new("reference", "one thing", $"{Showing.Shown.Quoted(typed)} may be {string.Join(" or ", meant.Select(Showing.Shown.Of))}: write which.");
}

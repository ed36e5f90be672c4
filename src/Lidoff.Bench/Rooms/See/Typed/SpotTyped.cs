using Lidoff.Bench.Working;
using Lidoff.Evidence.Pictures;

namespace Lidoff.Bench.Rooms.See.Typed;

/// <summary>A spot as it is typed at its place: <c>U7 radio beside the antenna because its crystal is near</c>, <c>J flat cable</c>, or words alone.</summary>
/// <param name="Spot">Its designator, typed or the next free one.</param>
/// <param name="Role">What it is.</param>
/// <param name="Why">Why one thinks so.</param>
/// <param name="Class">What sort of thing it is; empty where nothing says.</param>
public sealed record SpotTyped(string Spot, string Role, string Why, string Class)
{
    /// <summary>Reads the line; anything is one. A class chosen beside it, empty for none, goes before what the words say.</summary>
    public static SpotTyped Read(string? text, string chosen, IReadOnlyCollection<string> taken)
    {
        var line = (text ?? "").Trim();
        var words = line.Split(' ', 2, StringSplitOptions.TrimEntries);
        var spot = SpotLetters.Designator(words[0]);
        var letters = spot is null && SpotLetters.Stands(words[0]) ? words[0] : null;
        var rest = spot is null && letters is null ? line : words.Length > 1 ? words[1] : "";
        var why = rest.IndexOf(" because ", StringComparison.OrdinalIgnoreCase);
        var role = why < 0 ? rest : rest[..why].TrimEnd(' ', ',');
        var kind = chosen.Length > 0 ? chosen : SpotLetters.ClassOf(role);
        // A letter typed says more than a word that happens to fit another one.
        if (chosen.Length == 0 && (letters ?? spot?.TrimEnd('0', '1', '2', '3', '4', '5', '6', '7', '8', '9')) is { } typed && SpotLetters.Of(kind) != typed) kind = "";
        return new(spot ?? SpotLetters.Next(letters ?? SpotLetters.Of(kind), taken), role, why < 0 ? "" : rest[(why + " because ".Length)..].Trim(), kind);
    }

    /// <summary>The line to store.</summary>
    public Line Line(string sha256, PicturePoint at) => Working.Line.Of("spot").Set("spot", Spot).Set("role", Role).Set("why", Why).Set("class", Class).Set("picture", sha256).Set("point", at.X, at.Y);
}

using System.Globalization;
using Lidoff.Bench.Showing;
using Lidoff.Evidence.Entries;
using Lidoff.Seeing.Kinds;
using Lidoff.Telling.Dossiers;

namespace Lidoff.Bench.Rooms.See.Composing;

/// <summary>How a picture was made of others.</summary>
/// <param name="Entry">The entry that says so; null where the picture was made by a camera.</param>
/// <param name="Says">What it is, and what was said when it was made.</param>
/// <param name="Files">The entries that hold what was made: taken back with it.</param>
/// <param name="Of">Hash and name of each input that is still there, in order; the hash is empty for one that is not.</param>
/// <param name="Settings">What it was made with.</param>
public sealed record MadeOfView(EntryId? Entry, ValueList<EntryId> Files, ValueList<string> Says, ValueList<(string Sha256, string Name)> Of, string Settings)
{
    /// <summary>As the dossier stands.</summary>
    public static MadeOfView Read(OpenDossier dossier, string sha256)
    {
        var made = dossier.Session.View.Live<ComposedSighting>().LastOrDefault(each => each.Value.Picture == sha256 || each.Value.Second == sha256);
        if (made is null) return new(null, [], [], [], "");
        var names = dossier.Session.View.Live<FileAdded>().Select(file => file.Value).DistinctBy(file => file.Sha256).ToDictionary(file => file.Sha256, file => file.Name, StringComparer.Ordinal);
        return new(
            made.Id,
            [.. dossier.Session.View.Live<FileAdded>().Where(file => file.Value.From == Working.ComposeDesk.From && (file.Value.Sha256 == made.Value.Picture || file.Value.Sha256 == made.Value.Second)).Select(file => file.Id)],
            [What(made.Value, sha256), .. made.Value.Says],
            [.. made.Value.Inputs.Select(input => names.TryGetValue(input, out var name) ? (input, name) : ("", ShortHash.Of(input)))],
            made.Value.Settings + "; " + made.Value.Program);
    }

    private static string What(ComposedSighting made, string sha256)
    {
        var word = ComposeSentences.Methods.First(each => each.Method == made.Method).Title;
        if (made.Second != sha256) return $"{word} of {Count.Of(made.Inputs.Count, "picture")}{(made.LeftOut.Count > 0 ? $"; {made.LeftOut.Count} left out" : "")}.";
        if (made.Heights is not { } heights) return $"Relief of a {word.ToLowerInvariant()} of {Count.Of(made.Inputs.Count, "picture")}.";
        var unit = made.HeightsInMm ? "mm" : "slices";
        return string.Create(CultureInfo.InvariantCulture, $"Heights of a focus stack: black is {heights.From:0.###}, white is {heights.To:0.###} {unit}{(made.HeightsInMm ? " towards the camera from the first slice's focus" : "")}.");
    }
}

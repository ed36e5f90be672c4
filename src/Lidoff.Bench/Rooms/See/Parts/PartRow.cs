using System.Text.Json;
using Lidoff.Bench.Components.Parts.Reading;
using Lidoff.Bench.Rooms.See.Typed;
using Lidoff.Bench.Rooms.See.Viewing;
using Lidoff.Bench.Working;
using Lidoff.Evidence.Entries;
using Lidoff.Seeing.Kinds;

namespace Lidoff.Bench.Rooms.See.Parts;

/// <summary>A part that a machine found in a picture and that waits to be taken as a spot.</summary>
/// <param name="Number">Its number in the list and over the picture, from 1.</param>
/// <param name="HasBody">Whether a body was found around it.</param>
/// <param name="Reading">What was read on it, its spot left empty.</param>
/// <param name="Crop">It, cut out upright.</param>
/// <param name="Spot">The spot that was pointed at on it, or as which it was taken; empty for none.</param>
public sealed record PartRow(int Number, bool HasBody, ReadingSighting Reading, ReadingCrop Crop, string Spot)
{
    /// <summary>What was found, beside the spots of the picture.</summary>
    public static ValueList<PartRow> Of(PartsFound found, PictureView view) =>
        [.. found.Parts.Select((part, i) => new PartRow(i + 1, part.HasBody, part.Reading, ReadingCrop.Of(part.Reading, _ => view.FileName)[0], view.Seen.FirstOrDefault(spot => part.Reading.Region.Holds(spot.At))?.Value.Spot ?? ""))];

    /// <summary>Its outline over the picture, with its number.</summary>
    public IEnumerable<StageLine> Sides()
    {
        var corners = Reading.Region.Corners;
        return corners.Select((from, i) => new StageLine($"part:{Number}:{i}", from.X, from.Y, corners[(i + 1) % 4].X, corners[(i + 1) % 4].Y, HasBody ? "found box" : "read box", i == 0 ? FormattableString.Invariant($"{Number}") : "", Spot.Length > 0));
    }

    /// <summary>The lines that make a spot of it: a box around it, and what was read.</summary>
    /// <param name="spot">As what.</param>
    /// <param name="view">The picture.</param>
    public IReadOnlyList<Line> Lines(string spot, PictureView view)
    {
        var corners = Reading.Region.Corners;
        var (left, top) = (Math.Max(0, corners.Min(c => c.X)), Math.Max(0, corners.Min(c => c.Y)));
        var (right, foot) = (Math.Min(view.Width, corners.Max(c => c.X)), Math.Min(view.Height, corners.Max(c => c.Y)));
        var box = Line.Of("spot").Set("specimen", view.Tags.Specimen).Set("spot", spot).Set("picture", view.Sha256).Set("box", [Px(left), Px(top), Px(right - left), Px(foot - top)]);
        var reading = Line.Of(ReadingKind.Word).Set("specimen", view.Tags.Specimen);
        foreach (var (key, value) in Keys(Reading with { Spot = spot })) reading.With(key, value.WriteTo);
        return [box, reading];
    }

    /// <summary>The lines of several, and the spots they become: the next free ones.</summary>
    public static (ValueList<string> Spots, IReadOnlyList<Line> Lines) All(IEnumerable<PartRow> rows, PictureView view)
    {
        var (taken, lines) = (view.Taken.ToList(), new List<Line>());
        foreach (var row in rows)
        {
            var spot = SpotLetters.Next(SpotLetters.Of(""), taken);
            taken.Add(spot);
            lines.AddRange(row.Lines(spot, view));
        }

        return ([.. taken.Skip(view.Taken.Count)], lines);
    }

    private static double Px(double px) => Math.Round(px, 1);

    private static List<(string Key, JsonElement Value)> Keys(ReadingSighting reading)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream))
        {
            json.WriteStartObject();
            ReadingKind.WriteKeys(json, reading);
            json.WriteEndObject();
        }

        using var document = JsonDocument.Parse(stream.ToArray());
        return [.. document.RootElement.EnumerateObject().Select(property => (property.Name, property.Value.Clone()))];
    }
}

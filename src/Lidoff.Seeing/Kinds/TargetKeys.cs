using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Measuring.Targets;

namespace Lidoff.Seeing.Kinds;

/// <summary>The keys of a target within a scale, read and written.</summary>
public static class TargetKeys
{
    private const int MostTiles = 60;
    private const int MostFound = 1_000_000;

    /// <summary>Reads them; null where something was at fault, which the reader then holds.</summary>
    internal static KnownTarget? Read(PayloadReader reader)
    {
        var pattern = reader.OneOf("kind", ("checker", TargetPattern.Checker), ("dots", TargetPattern.Dots));
        var pitch = reader.Number("pitch_mm", NumberRange.Positive);
        var u = reader.OptionalNumber("u_mm", NumberRange.NotNegative) ?? (KnownTarget.PrintedU * pitch);
        var points = reader.Points("points", KnownTarget.LeastTiles, MostTiles);
        var steps = reader.Points("steps", KnownTarget.LeastTiles, MostTiles);
        var doubts = reader.Numbers("u_steps", KnownTarget.LeastTiles, MostTiles, NumberRange.NotNegative);
        var bent = reader.OptionalNumber("bent", NumberRange.NotNegative) ?? 0;
        var found = reader.OptionalWhole("found", KnownTarget.LeastTiles, MostFound) ?? points.Count;
        if (points.Count != steps.Count || points.Count != doubts.Count)
        {
            reader.Fail("steps", "as many as points, and as many u_steps");
            return null;
        }

        if (points.Distinct().Count() < points.Count || steps.Distinct().Count() < steps.Count || steps.Select(step => step.X).Distinct().Count() < 3 || steps.Select(step => step.Y).Distinct().Count() < 3)
        {
            reader.Fail("steps", "different places over three columns and three rows or more");
            return null;
        }

        return new(pattern, pitch, u, [.. points.Select((point, i) => new TargetTile(new(point.X, point.Y), steps[i].X, steps[i].Y, doubts[i]))], bent, (int)found);
    }

    /// <summary>Writes them as an object.</summary>
    public static void Write(Utf8JsonWriter json, KnownTarget target)
    {
        Guard.NotNull(json);
        Guard.NotNull(target);
        json.WriteStartObject();
        json.WriteString("kind", target.Pattern == TargetPattern.Checker ? "checker" : "dots");
        json.WriteNumber("pitch_mm", target.PitchMm);
        json.WriteNumber("u_mm", Math.Round(target.PitchUMm, 9));
        Pairs("points", tile => (tile.At.X, tile.At.Y));
        Pairs("steps", tile => (tile.Column, tile.Row));
        json.WriteStartArray("u_steps");
        foreach (var tile in target.Tiles) json.WriteNumberValue(Math.Round(tile.U, 7));
        json.WriteEndArray();
        json.WriteNumber("bent", Math.Round(target.Bent, 7));
        json.WriteNumber("found", target.Found);
        json.WriteEndObject();

        void Pairs(string key, Func<TargetTile, (double A, double B)> of)
        {
            json.WriteStartArray(key);
            foreach (var (a, b) in target.Tiles.Select(of))
            {
                json.WriteStartArray();
                json.WriteNumberValue(Math.Round(a, 4));
                json.WriteNumberValue(Math.Round(b, 4));
                json.WriteEndArray();
            }

            json.WriteEndArray();
        }
    }
}

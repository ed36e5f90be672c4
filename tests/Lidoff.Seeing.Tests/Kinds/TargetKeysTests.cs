using System.Text;
using System.Text.Json;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Measuring.Targets;

namespace Lidoff.Seeing.Tests.Kinds;

/// <summary>A scale that is a target: written, read back, and what is wrong with one.</summary>
public sealed class TargetKeysTests
{
    private static readonly KnownTarget Target = new(
        TargetPattern.Dots, 2, 0.008, [.. Enumerable.Range(0, 9).Select(i => new TargetTile(new(100 + (80 * (i % 3)), 100 + (80 * (i / 3))), 2 * (i % 3), 2 * (i / 3), 0.0007))], 0.0001, 25);

    [Fact]
    public void What_is_written_reads_back_and_its_longest_length_stands_for_it()
    {
        var read = Read(Written(Target)).Value;
        var target = read.Reference.Target!;
        Assert.Equal(Target, target);
        // The diagonal of four steps each way, 2 mm each.
        Assert.Equal(Math.Sqrt(128), read.Reference.LengthMm, 1e-9);
        // 0.4 % of the pitch, and ten times what shows of a bend.
        Assert.Equal(Math.Sqrt((0.004 * 0.004) + (0.001 * 0.001)), read.Reference.UMm / read.Reference.LengthMm, 1e-9);
        Assert.Equal(1.5, read.Reference.HeightMm);
    }

    [Fact]
    public void Its_faults_are_named_together()
    {
        var faults = Read("""{"picture":"x","length_mm":3,"pattern":{"kind":"stripes","pitch_mm":0,"points":[[1,2]],"steps":[[0,0]],"u_steps":[0.1]}}""").Faults.Select(fault => fault.Say).ToList();
        Assert.Contains(faults, say => say.Contains("pattern.kind", StringComparison.Ordinal));
        Assert.Contains(faults, say => say.Contains("pattern.pitch_mm", StringComparison.Ordinal));
        Assert.Contains(faults, say => say.Contains("pattern.points", StringComparison.Ordinal));
        Assert.Contains(faults, say => say.Contains("its pitch is the known length", StringComparison.Ordinal));
        var unequal = Read(Written(Target).Replace("[[0,0],", "[[7,7],[0,0],", StringComparison.Ordinal)).Faults.Select(fault => fault.Say);
        Assert.Contains(unequal, say => say.Contains("as many as points", StringComparison.Ordinal));
        var line = Read(Written(Target with { Tiles = [.. Target.Tiles.Select((tile, i) => tile with { Row = 0, Column = i })] })).Faults.Select(fault => fault.Say);
        Assert.Contains(line, say => say.Contains("three columns and three rows", StringComparison.Ordinal));
        // Without a target the length is needed as ever.
        Assert.Equal(3, Read("""{"picture":"x"}""").Faults.Count);
    }

    private static Numbers.Failing.Outcome<ScaleSighting> Read(string json) => new ScaleKind().Read(JsonDocument.Parse(json).RootElement, 1);

    private static string Written(KnownTarget target)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream))
        {
            json.WriteStartObject();
            json.WriteString("picture", "x");
            json.WriteNumber("height_mm", 1.5);
            json.WritePropertyName("pattern");
            TargetKeys.Write(json, target);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray());
    }
}

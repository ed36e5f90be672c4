using System.Text.Json;
using Lidoff.Seeing.Pictures;
using Lidoff.Seeing.Reading.Engine;
using Lidoff.Seeing.Reading.Finding;
using Lidoff.Seeing.Reading.Networks;

namespace Lidoff.Seeing.Tests.Reading.Networks;

/// <summary>
/// The networks that come with the program, on made-up package tops of bench/marks: drawn by a general drawing library in typefaces that no
/// training line was drawn in, with the truth beside them. The whole set with its figures is the bench's (read-marks).
/// </summary>
public sealed class ShippedNetworksTests
{
    private static readonly string[] Fair = ["plain", "small", "logo", "glare", "square face"];

    [Fact]
    public void Nine_lines_in_ten_of_fair_tops_are_read_right_from_the_picture_on()
    {
        using var networks = new OnnxNetworks(OnnxNetworks.FolderOf(AppContext.BaseDirectory));
        Assert.Empty(networks.Troubles);
        var reader = new PictureReading(networks);
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "Lidoff.slnx"))) folder = Path.GetDirectoryName(folder)!;
        folder = Path.Combine(folder, "bench", "marks");
        var (lines, right, turns) = (0, 0, new List<double>());
        foreach (var row in File.ReadLines(Path.Combine(folder, "truth.jsonl")))
        {
            using var json = JsonDocument.Parse(row);
            var truth = json.RootElement;
            if (!Fair.Contains(truth.GetProperty("hard").GetString()) || turns.Count == 30) continue;
            var name = truth.GetProperty("image").GetString()!;
            var path = Path.Combine(folder, name);
            var read = reader.Read(path, name, PictureFile.Read(path, name).Value).Value;
            var texts = read.Lines.Select(line => line.Reading.Readings[0].Text).ToList();
            foreach (var line in truth.GetProperty("lines").EnumerateArray())
            {
                lines++;
                right += texts.Remove(line.GetProperty("text").GetString()!) ? 1 : 0;
            }

            turns.Add(Math.Abs(Math.IEEERemainder(read.TurnDeg - truth.GetProperty("turn_deg").GetDouble(), 360)));
        }

        Assert.Equal(30, turns.Count);
        Assert.InRange(right, 0.9 * lines, lines);
        Assert.InRange(turns.Count(turn => turn < 10), 29, 30);
    }
}

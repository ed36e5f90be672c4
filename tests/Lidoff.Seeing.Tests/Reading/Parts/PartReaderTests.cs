using System.Text.Json;
using Lidoff.Seeing.Pictures;
using Lidoff.Seeing.Reading;
using Lidoff.Seeing.Reading.Engine;
using Lidoff.Seeing.Reading.Networks;
using Lidoff.Seeing.Reading.Parts;
using Lidoff.TestSupport;
using NetVips;

namespace Lidoff.Seeing.Tests.Reading.Parts;

/// <summary>The networks that come with the program on a board made up of tops of bench/marks, whose marks are known (truth.jsonl).</summary>
public sealed class PartReaderTests : IDisposable
{
    // Which top, where its middle lies on the board, turned by how many quarters.
    private static readonly (string Top, int X, int Y, int Quarters)[] Board = [("000", 260, 200, 0), ("009", 680, 210, 1), ("014", 300, 560, 2)];

    private readonly TempFolder folder = new();
    private readonly OnnxNetworks networks = new(OnnxNetworks.FolderOf(AppContext.BaseDirectory));

    public void Dispose()
    {
        networks.Dispose();
        folder.Dispose();
    }

    [Fact]
    public void Parts_of_a_board_are_found_and_read_wherever_and_however_they_lie()
    {
        var (path, header) = Picture();
        var steps = new List<(long Done, long All)>();
        var grey = PartReader.Open(path, "board.png", header).Value;
        var read = new PartReader(networks).Read(grey, header, (done, all) => steps.Add((done, all)), CancellationToken.None);
        Assert.Empty(read.Says);
        Assert.Equal(Board.Length, read.Parts.Count);
        foreach (var (top, x, y, quarters) in Board)
        {
            var part = Assert.Single(read.Parts, part => part.Region.Holds(new(x, y)));
            var lines = Truth(top);
            // Most of its lines in their order, at the turn it was laid at; the tops' own turns are up to some degrees, and one is printed on a slant of its own.
            Assert.True(part.Read.Lines.Select(line => line.Reading.Text).Intersect(lines).Count() * 2 > lines.Count, top);
            Assert.InRange(Math.Abs(Math.IEEERemainder(part.Read.TurnDeg - TurnDeg(top) + (90 * quarters), 360)), 0, 6);
        }

        // What shows its body's edges comes first.
        Assert.True(read.Parts[0].HasBody);
        Assert.True(read.Parts[0].Region.Holds(new(Board[1].X, Board[1].Y)));
        Assert.Equal(Enumerable.Range(0, steps.Count).Select(i => (long)i), steps.Select(step => step.Done));
        Assert.All(steps, step => Assert.True(step.Done < step.All));

        using var stop = new CancellationTokenSource();
        Assert.Throws<OperationCanceledException>(() => new PartReader(networks).Read(grey, header, (done, _) => { if (done == 2) stop.Cancel(); }, stop.Token));
    }

    [Fact]
    public void A_board_without_a_mark_says_so()
    {
        var (_, header) = Picture();
        var read = new PartReader(networks).Read(new(new float[400 * 300], 400, 300), header with { StoredWidth = 400, StoredHeight = 300 }, (_, _) => { }, CancellationToken.None);
        Assert.Empty(read.Parts);
        Assert.Equal([ReadingSentences.NoParts], read.Says);
    }

    private (string Path, PictureHeader Header) Picture()
    {
        using var bare = Image.Black(900, 760, 3).Linear([1.0, 1, 1], [30.0, 84, 52]).Cast(Enums.BandFormat.Uchar);
        var board = bare;
        foreach (var (name, x, y, quarters) in Board)
        {
            using var stored = Image.NewFromFile(Path.Combine(Root(), "bench", "marks", name + ".jpg"));
            using var top = (stored.Bands == 1 ? stored.Colourspace(Enums.Interpretation.Srgb) : stored).Rot((Enums.Angle)quarters);
            board = board.Insert(top, x - (top.Width / 2), y - (top.Height / 2));
        }

        var path = folder["board.png"];
        File.WriteAllBytes(path, board.PngsaveBuffer());
        return (path, PictureFile.Read(path, "board.png").Value);
    }

    private static List<string> Truth(string top) => Of(top, each => each.GetProperty("lines").EnumerateArray().Select(line => line.GetProperty("text").GetString()!).ToList());

    private static double TurnDeg(string top) => Of(top, each => each.GetProperty("turn_deg").GetDouble());

    private static T Of<T>(string top, Func<JsonElement, T> what)
    {
        using var json = JsonDocument.Parse(File.ReadLines(Path.Combine(Root(), "bench", "marks", "truth.jsonl")).Single(line => line.Contains($"\"{top}.jpg\"", StringComparison.Ordinal)));
        return what(json.RootElement);
    }

    private static string Root()
    {
        var at = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(at, "Lidoff.slnx"))) at = Path.GetDirectoryName(at)!;
        return at;
    }
}

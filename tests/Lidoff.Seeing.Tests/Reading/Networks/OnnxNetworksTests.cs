using Lidoff.Seeing.Reading.Finding;
using Lidoff.Seeing.Reading.Lattices;
using Lidoff.Seeing.Reading.Networks;
using Lidoff.TestSupport;

namespace Lidoff.Seeing.Tests.Reading.Networks;

/// <summary>The true runtime on networks of a few nodes whose answers are worked out by hand.</summary>
public sealed class OnnxNetworksTests
{
    private static readonly ReadingAlphabet Marks = ReadingAlphabet.OfMarks;

    private static TempFolder Folder()
    {
        var folder = new TempFolder();
        TinyOnnx.Write(folder.Path, "finder", TinyOnnx.Finder());
        TinyOnnx.Write(folder.Path, "bodies", TinyOnnx.Finder());
        TinyOnnx.Write(folder.Path, "reader", TinyOnnx.Reader(Marks.Classes, new Dictionary<int, float> { [0] = -1, [11] = 1, [12] = 3 }), Marks.Symbols);
        return folder;
    }

    [Fact]
    public void Maps_come_cell_by_cell_with_the_valid_part_known()
    {
        using var folder = Folder();
        using var networks = new OnnxNetworks(folder.Path);
        Assert.Empty(networks.Troubles);
        // 64 × 32 px, of which 60 × 30 hold picture; 2 everywhere but for a cell of 0 on the left top.
        var pixels = Enumerable.Range(0, 64 * 32).Select(i => i % 64 < 4 && i / 64 < 4 ? 0f : 2f).ToArray();
        var maps = networks.Find(new(pixels, 64, 32, 60, 30, PictureRegion.Box(0, 0, 60, 30)));
        Assert.Equal((16, 8, 15, 8), (maps.Columns, maps.Rows, maps.ValidColumns, maps.ValidRows));
        // Line logit: 8 × mean - 4.
        Assert.Equal(1 / (1 + Math.Exp(4)), maps.LineAt(2, 2), 6);
        Assert.Equal(1 / (1 + Math.Exp(-12)), maps.LineAt(30, 14), 6);
        Assert.Equal((1, 0), maps.Direction(5));
        Assert.Equal(40, maps.Height(5), 4);
        Assert.Equal(0, maps.LineAt(62.5, 10));
    }

    [Fact]
    public void Strips_of_any_width_come_back_in_their_order()
    {
        using var folder = Folder();
        using var networks = new OnnxNetworks(folder.Path);
        // Level -1 is the blank, 1 is A, 3 is B; eight columns each.
        LineStrip Strip(int width, string spelt)
        {
            var pixels = new float[48 * width];
            for (var i = 0; i < pixels.Length; i++) pixels[i] = i % width / 8 is var at && at < spelt.Length ? spelt[at] switch { 'A' => 1, 'B' => 3, _ => -1 } : -1;
            return new(pixels, width, width);
        }

        string[] spelt = ["A-B", "BB-A-A", "A", "B-A-B-A"];
        int[] widths = [64, 96, 64, 480];
        var lattices = networks.Score([.. spelt.Zip(widths, (text, width) => Strip(width, text))]);
        Assert.Equal(["AB", "BAA", "A", "BABA"], lattices.Select(lattice => LineReading.Of([lattice]).Text));
        Assert.Equal(widths.Select(width => width / 4), lattices.Select(lattice => lattice.Steps));
        // The same again is the same to the last bit, and so it is alone.
        Assert.Equal(lattices[0].LogProbability("AB"), networks.Score([Strip(64, "A-B")])[0].LogProbability("AB"));
        Assert.Empty(networks.Score([]));
    }

    [Fact]
    public void Forty_strips_of_one_width_go_through_in_parts()
    {
        using var folder = Folder();
        using var networks = new OnnxNetworks(folder.Path);
        var strips = Enumerable.Range(0, 40).Select(i => new LineStrip([.. Enumerable.Repeat(i % 2 == 0 ? 1f : 3f, 48 * 64)], 64, 64)).ToList();
        Assert.Equal(Enumerable.Range(0, 40).Select(i => i % 2 == 0 ? "A" : "B"), networks.Score(strips).Select(lattice => LineReading.Of([lattice]).Text));
    }

    [Fact]
    public void Files_that_are_not_there_are_all_named_at_once_and_nothing_is_loaded_before()
    {
        using var folder = new TempFolder();
        using var networks = new OnnxNetworks(folder.Path);
        Assert.Equal(
            [
                $"finder.onnx is missing in {folder.Path}: marks cannot be read by the machine until it is put back. Everything else works, and you can type what you read.",
                $"bodies.onnx is missing in {folder.Path}: marks cannot be read by the machine until it is put back. Everything else works, and you can type what you read.",
                $"reader.onnx is missing in {folder.Path}: marks cannot be read by the machine until it is put back. Everything else works, and you can type what you read.",
            ],
            networks.Troubles.Select(fault => fault.Say));
    }

    [Fact]
    public void An_altered_file_is_told_by_its_hash()
    {
        using var folder = Folder();
        var path = Path.Combine(folder.Path, "reader.onnx");
        var bytes = File.ReadAllBytes(path);
        bytes[^1] ^= 1;
        File.WriteAllBytes(path, bytes);
        using var networks = new OnnxNetworks(folder.Path);
        var fault = Assert.Single(networks.Troubles);
        Assert.Matches("^reader.onnx was altered or not copied whole: its SHA-256 begins with [0-9a-f]{12}, its card says [0-9a-f]{12}. Marks cannot be read by the machine until it is put back; everything else works.$", fault.Say);
    }

    [Fact]
    public void A_file_that_is_no_network_or_another_one_and_a_broken_card_are_told()
    {
        using var folder = Folder();
        TinyOnnx.Write(folder.Path, "finder", [1, 2, 3]);
        using (var networks = new OnnxNetworks(folder.Path)) Assert.StartsWith("finder.onnx cannot be run (", Assert.Single(networks.Troubles).Say);
        TinyOnnx.Write(folder.Path, "finder", TinyOnnx.Reader(3, new Dictionary<int, float>()));
        using (var networks = new OnnxNetworks(folder.Path)) Assert.Equal("finder.onnx cannot be run (it has no input “picture” or no output “maps”): marks cannot be read by the machine until it is put back. Everything else works.", Assert.Single(networks.Troubles).Say);
        TinyOnnx.Write(folder.Path, "finder", TinyOnnx.Finder());
        TinyOnnx.Write(folder.Path, "bodies", [1, 2, 3]);
        using (var networks = new OnnxNetworks(folder.Path)) Assert.StartsWith("bodies.onnx cannot be run (", Assert.Single(networks.Troubles).Say);
        TinyOnnx.Write(folder.Path, "bodies", TinyOnnx.Finder());
        File.WriteAllText(Path.Combine(folder.Path, "reader.json"), """{"name":"r","version":"1","sha256":"12"}""");
        using (var networks = new OnnxNetworks(folder.Path)) Assert.StartsWith("reader.json cannot be read: “sha256” should be 64 hexadecimal digits", Assert.Single(networks.Troubles).Say.Replace('"', '“').Replace("“sha256“", "“sha256”", StringComparison.Ordinal));
        TinyOnnx.Write(folder.Path, "reader", TinyOnnx.Reader(3, new Dictionary<int, float>()));
        using (var networks = new OnnxNetworks(folder.Path)) Assert.StartsWith("reader.json cannot be read: “alphabet” is missing.", Assert.Single(networks.Troubles).Say);
    }

    [Fact]
    public void Settings_name_the_networks_and_the_runtime()
    {
        using var folder = Folder();
        using var networks = new OnnxNetworks(folder.Path);
        Assert.Matches("^tiny finder 1, tiny bodies 1, tiny reader 1, onnxruntime 1\\.31\\.1, one thread$", networks.Settings);
        Assert.All(networks.Hashes, hash => Assert.Matches("^[0-9a-f]{64}$", hash));
    }
}

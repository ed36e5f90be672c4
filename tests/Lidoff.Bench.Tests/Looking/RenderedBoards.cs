using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Rendering;
using Lidoff.Seeing.Rendering.Invented;

namespace Lidoff.Bench.Tests.Looking;

/// <summary>Pictures of the invented boards in the dossier d, each rendered once for all tests; what stands where in them is known.</summary>
internal static class RenderedBoards
{
    /// <summary>Both chips' marks can be read in it.</summary>
    public const string Top = "brindle-main-top.png";

    private static readonly System.Collections.Concurrent.ConcurrentDictionary<string, Lazy<byte[]>> Rendered = new(StringComparer.Ordinal);

    /// <summary>Adds a picture and hands back its hash.</summary>
    public static async Task<string> Add(FakeBench bench, string name = Top)
    {
        bench.Set("d", "");
        using var png = new MemoryStream(Rendered.GetOrAdd(name, _ => new(() => Png(name))).Value, writable: false);
        return (await bench.Add("d", name, png, "drop", CancellationToken.None)).Value.Sha256;
    }

    /// <summary>The line that points at a part's middle.</summary>
    public static string Spot(string spot, string name = Top, string kind = "chip")
    {
        var at = Part(spot, name).Centre;
        return FormattableString.Invariant($$"""{"kind":"spot","spot":"{{spot}}","class":"{{kind}}","picture":"{{name}}","point":[{{at.X}},{{at.Y}}]}""");
    }

    /// <summary>What is printed on a part.</summary>
    public static IReadOnlyList<string> Mark(string spot, string name = Top) => Part(spot, name).Part.Marks;

    public static TruePart Part(string spot, string name = Top) => BrindleShots.Named(name).Truth.Parts.Single(part => part.Part.Spot == spot);

    private static byte[] Png(string name)
    {
        using var png = new MemoryStream();
        SceneRenderer.Render(BrindleShots.Named(name).Scene).WritePng(png);
        return png.ToArray();
    }
}

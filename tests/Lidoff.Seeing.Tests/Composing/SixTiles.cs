using Lidoff.Seeing.Composing;
using Lidoff.Seeing.Rendering;

namespace Lidoff.Seeing.Tests.Composing;

/// <summary>Two rows of three tiles of the invented main board, and what they are stitched to; made once.</summary>
public sealed class SixTiles : IDisposable
{
    private static readonly (double X, double Y)[] At = [(7, 6), (18, 6), (28, 6), (7, 15.5), (18, 15.5), (28, 15.5)];

    public SixTiles()
    {
        for (var i = 0; i < At.Length; i++) TileBench.Add(Bench, TileBench.Tile(TileBench.Board, At[i].X, At[i].Y, 30 + i), i);
        Made = Bench.Make(ComposeMethod.Stitch).Value;
    }

    internal static Scene First { get; } = TileBench.Tile(TileBench.Board, At[0].X, At[0].Y, 30);

    internal Bench Bench { get; } = new();

    internal Composition Made { get; }

    public void Dispose() => Bench.Dispose();
}

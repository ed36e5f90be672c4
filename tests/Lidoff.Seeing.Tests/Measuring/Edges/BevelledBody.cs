using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Measuring.Edges;

namespace Lidoff.Seeing.Tests.Measuring.Edges;

/// <summary>
/// A moulded body from above, its two ends drawn step by step as <see cref="DrawnEdges"/> does: the top with glare, the rounded rim, the bevel
/// (a moulded body's draft), the widest outline, which drawings of packages dimension (JEDEC MO drawings take D1 and E1 at the parting line), shadow, leads,
/// ground. All drawn from ranges of moulded packages at 15 to 40 px/mm, from memory: a draft of 5° to 15° over 0.4 to 0.8 mm of height, a rim of some hundredths of a mm.
/// </summary>
/// <param name="Field">The picture.</param>
/// <param name="Outline">The widest outline's ends, left and right.</param>
/// <param name="Top">The ends of the flat top: the middle of the rim.</param>
/// <param name="TurnDegrees">Turn of its edges.</param>
internal sealed record BevelledBody(PixelField Field, PicturePoint[] Outline, PicturePoint[] Top, double TurnDegrees)
{
    private const int Width = 220, Height = 130;

    /// <summary>Where the edge that crosses an end lies at another height of the picture.</summary>
    public PicturePoint At(PicturePoint end, double y) => new(end.X - ((y - end.Y) * Math.Tan(TurnDegrees * Math.PI / 180)), y);

    /// <summary>Draws one.</summary>
    public static BevelledBody Draw(Random random)
    {
        double Between(double low, double high) => low + ((high - low) * random.NextDouble());
        var (curve, blur, turn) = (Between(1, 2.4), Between(0.6, 1.5), Between(-3, 3));
        var bright = random.Next(5) == 0;
        var top = bright ? Between(140, 210) : Between(30, 75);
        var ground = Between(50, 200);
        var leads = random.Next(3) == 0;
        var (pitch, phase, lead) = (Between(10, 22), random.NextDouble(), Between(150, 230));
        var (glareAt, glareY, glareWide, glare) = (Between(40, 180), Between(30, 100), Between(6, 25), random.Next(3) == 0 ? Between(20, 120) : 0);
        PicturePoint[] ends = [new(55 + random.NextDouble(), 65), new(160 + random.NextDouble(), 65)];
        // Light falls from one side: the bevel there is brighter than the top, the other one darker, and that one throws the shadow.
        var lit = random.Next(2);
        var sides = Enumerable.Range(0, 2).Select(i => new Side(
            Bevel: Between(0.8, 5), Face: Math.Min(240, top * (i == lit ? Between(0.9, 2.2) : Between(0.4, 1.05))), RimWide: Between(0.5, 1.5), Rim: Between(0, 50),
            Shadow: i == lit ? Between(0.3, 1.5) : Between(1, 6), Dark: ground * Between(0.25, 0.7), Soft: Math.Sqrt((blur * blur) + Math.Pow(Between(0.2, 1.5), 2)))).ToArray();

        double Light(double value) => DrawnEdges.Light(Math.Clamp(value, 1, 254), curve);
        double At(double x, double y)
        {
            var value = Light(top + (glare * Math.Exp(-(((x - glareAt) * (x - glareAt)) + ((y - glareY) * (y - glareY))) / (2 * glareWide * glareWide))));
            for (var i = 0; i < 2; i++)
            {
                var side = sides[i];
                var d = (i == 0 ? -1 : 1) * DrawnEdges.Beyond(x, y, ends[i], turn);
                // Each layer hides the one before it from where it begins; the blur is the lens's.
                void From(double place, double soft, double level) => value += (level - value) * DrawnEdges.Share((d - place) / soft);
                From(-side.Bevel - (side.RimWide / 2), blur, Light(Math.Max(top, side.Face) + side.Rim));
                From(-side.Bevel + (side.RimWide / 2), blur, Light(side.Face));
                From(0, blur, Light(side.Dark));
                From(side.Shadow, side.Soft, Light(ground));
                if (!leads) continue;
                var off = Math.Abs((((y / pitch) + phase) % 1) - 0.5) * pitch;
                value += (Light(lead) - value) * DrawnEdges.Share(d / blur) * DrawnEdges.Share(((pitch / 4) - off) / blur);
            }

            return value;
        }

        var field = DrawnEdges.Draw(Width, Height, At, random, curve, Between(0.5, 4), 75 + random.Next(20));
        return new(field, ends, [ends[0] with { X = ends[0].X + sides[0].Bevel }, ends[1] with { X = ends[1].X - sides[1].Bevel }], turn);
    }

    /// <summary>One end, px and steps of 255: how wide the bevel is, how bright, the rim between it and the top, the shadow's width, darkness and softness.</summary>
    private sealed record Side(double Bevel, double Face, double RimWide, double Rim, double Shadow, double Dark, double Soft);
}

using System.Globalization;

namespace Lidoff.Weighing.Tests.Modelling;

/// <summary>
/// A ruler that a person took for the scale of a picture: with its middle line it tells a slant along it, as the ruler of a measuring job does. Places come from a pinhole 100 mm over the
/// board's middle that leans about the vertical: a place x mm to the right lies at f·x·cos / (100 + x·sin) px.
/// </summary>
public sealed class RulerScaleTests
{
    private const double Slant = 15;

    // 40 mm along the slant at the left, and what is asked for at the right, where the board is farther away.
    private static readonly string Asked = $$"""{"kind":"length","spot":"U1","what":"width","picture":"p.png","from":{{Show(20, 0)}},"to":{{Show(40, 0)}},"click_u_px":0.3}""";

    [Fact]
    public void With_its_middle_line_a_ruler_tells_the_slant_along_it()
    {
        var (whole, parts) = (Number(""), Number($$""","middle":{{Show(-20, 0)}},"middle_mm":20"""));
        Assert.True(whole.High < 20, "by the ruler as one length the interval misses");
        Assert.InRange(20, parts.Low, parts.High);
        Assert.InRange(parts.Value, 19.6, 20.4);
    }

    // Undoing and taking it over from the picture it was made of keep the middle where its ends are.
    [Fact]
    public void The_middle_moves_with_its_ends()
    {
        var known = new Seeing.Measuring.ReferenceLength(new(10, 20), new(110, 20), 40, 0.02) { Middle = (new(55, 20), 20) };
        var moved = known.Moved(5, -5);
        Assert.Equal((60.0, 15.0), (moved.Middle!.Value.At.X, moved.Middle.Value.At.Y));
        Assert.Equal([20.0, 20.0], moved.Parts(3).Select(part => part.LengthMm));
        Assert.All(moved.Parts(3), part => Assert.Equal(3, part.Ruler));
    }

    private static (double Low, double Value, double High) Number(string middle)
    {
        using var bench = new Bench();
        bench.Picture("p.png");
        bench.Note($$"""{"kind":"scale","picture":"p.png","from":{{Show(-40, 0)}},"to":{{Show(0, 0)}},"length_mm":40,"u_mm":0.02,"click_u_px":0.1,"camera_distance_mm":100{{middle}}}""", Asked);
        var value = bench.Model.Value("length:U1:width");
        return (value.Low * 1e3, value.Number!.Value * 1e3, value.High * 1e3);
    }

    private static string Show(double x, double y)
    {
        var (sin, cos) = Math.SinCos(Slant * Math.PI / 180);
        var deep = 100 + (x * sin);
        return string.Create(CultureInfo.InvariantCulture, $"[{1000 + (1800 * x * cos / deep)},{500 + (1800 * y / deep)}]");
    }
}

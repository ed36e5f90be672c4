using System.Globalization;
using Lidoff.Evidence.Entries;
using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Measuring.Shapes;
using Lidoff.Seeing.Standards;

namespace Lidoff.Bench.Rooms.See.Viewing;

/// <summary>What a length comes to, in words.</summary>
/// <param name="Value">"6.98 ± 0.06 mm"; empty where it could not be measured.</param>
/// <param name="Interval">"6.88 to 7.08 mm, 90 %"; empty likewise.</param>
/// <param name="Snap">The standard size it must be, with how much speaks for it; empty for none.</param>
/// <param name="Notes">Warnings, or why it could not be measured.</param>
public sealed record LengthFound(string Value, string Interval, string Snap, ValueList<string> Notes)
{
    /// <summary>Of a value with its spread.</summary>
    public static LengthFound Of(double mm, double u, double low, double high, StandardSnap? snap, IEnumerable<MeasureWarning> warnings, string unit = "mm")
    {
        // Two digits of the uncertainty, so that a clicked length does not look like a caliper's.
        var digits = u > 0 ? (int)Math.Clamp(1 - Math.Floor(Numbers.Elementary.Log(u) / Numbers.Elementary.Log(10)), 0, 5) : 3;
        var form = "F" + digits.ToString(CultureInfo.InvariantCulture);
        return new(
            string.Create(CultureInfo.InvariantCulture, $"{mm.ToString(form, CultureInfo.InvariantCulture)} ± {u.ToString(form, CultureInfo.InvariantCulture)} {unit}"),
            string.Create(CultureInfo.InvariantCulture, $"{low.ToString(form, CultureInfo.InvariantCulture)} to {high.ToString(form, CultureInfo.InvariantCulture)} {unit}, 90 %"),
            snap is null ? "" : string.Create(CultureInfo.InvariantCulture, $"{snap.Mm:0.###} mm {snap.Kind}, {Math.Min(snap.LikelihoodRatio, 1e6):0} to 1"),
            [.. warnings.Select(warning => warning.Say)]);
    }

    /// <summary>Of a measured shape.</summary>
    public static LengthFound Of(MeasuredShape shape) => Of(shape.Value, shape.U, shape.Low, shape.High, shape.Snap, shape.Warnings, Unit(shape.Kind));

    /// <summary>The unit in which a shape is told.</summary>
    public static string Unit(ShapeKind shape) => shape switch { ShapeKind.Angle => "°", ShapeKind.Area => "mm²", _ => "mm" };

    /// <summary>Of what could not be measured.</summary>
    public static LengthFound Not(IEnumerable<string> why) => new("", "", "", [.. why]);
}

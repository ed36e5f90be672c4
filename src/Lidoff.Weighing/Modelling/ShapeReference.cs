using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Measuring.Shapes;

namespace Lidoff.Weighing.Modelling;

/// <summary>How a shape clicked in a picture is asked for.</summary>
public static class ShapeReference
{
    /// <summary>A circle is the length of its name, a pitch that of its spot; angles and areas go by their own words.</summary>
    public static string Of(ClickedShape shape) => Guard.NotNull(shape).Shape switch
    {
        ShapeKind.Circle => $"length:{shape.Spot}:{shape.What}",
        ShapeKind.Pitch => "pitch:" + shape.Spot,
        ShapeKind.Angle => $"angle:{shape.Spot}:{shape.What}",
        _ => $"area:{shape.Spot}:{shape.What}",
    };
}

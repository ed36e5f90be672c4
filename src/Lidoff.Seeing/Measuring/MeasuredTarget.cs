using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Measuring.Bodies;
using Lidoff.Seeing.Measuring.Shapes;

namespace Lidoff.Seeing.Measuring;

/// <summary>What became of one target: its length, or the faults that stand in its place; or, where another shape or a body was asked for, that one.</summary>
public sealed record MeasuredTarget(string Id, Outcome<MeasuredLength> Length, MeasuredShape? Shape = null, MeasuredBody? Body = null)
{
    /// <summary>A measured shape.</summary>
    public static MeasuredTarget Of(MeasuredShape shape) => new(shape.Id, new Fault("kind", "a length", SeeingSentences.NotALength(shape.Kind)), shape);

    /// <summary>True when it was measured.</summary>
    public bool Ok => Shape is not null || Body is not null || Length.Ok;

    /// <summary>A measured body.</summary>
    public static MeasuredTarget OfBody(MeasuredBody body) => new(body.Id, new Fault("kind", "a length", SeeingSentences.BodyNotALength()), Body: body);
}

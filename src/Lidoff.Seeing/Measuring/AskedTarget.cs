using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Measuring.Bodies;
using Lidoff.Seeing.Measuring.Shapes;

namespace Lidoff.Seeing.Measuring;

/// <summary>One target of a job: its name, and either the length to find or everything that is wrong with it; or, where another shape or a body is asked for, that one.</summary>
public sealed record AskedTarget(string Id, Outcome<TargetLength> Length, TargetShape? Shape = null, TargetBody? Body = null)
{
    /// <summary>A target that asks for another shape than a length.</summary>
    public static AskedTarget Of(TargetShape shape) => new(shape.Id, new Fault("kind", "a length", SeeingSentences.NotALength(shape.Kind)), shape);

    /// <summary>A target that asks for a body.</summary>
    public static AskedTarget OfBody(TargetBody body) => new(body.Id, new Fault("kind", "a length", SeeingSentences.BodyNotALength()), Body: body);
}

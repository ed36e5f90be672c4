using Lidoff.Opening.Cautioning;

namespace Lidoff.Opening.Kinds;

/// <summary>One step of opening: what was done, with what, and what it destroyed.</summary>
/// <param name="Does">What was done.</param>
/// <param name="Act">What sort of act it was; decides which cautions stand beside it.</param>
/// <param name="Tool">Tool and blade; empty when not said.</param>
/// <param name="Setting">Temperature, time, torque and the like, as typed; empty when not said.</param>
/// <param name="Minutes">How long it took, min.</param>
/// <param name="Destroys">What can no longer be seen or measured; empty when nothing was said to be lost.</param>
/// <param name="Picture">File name, entry id or the first digits of a file's hash; empty when none was taken.</param>
/// <param name="Plan">The plan that it carried out; empty when it was not planned.</param>
public sealed record StepSighting(
    string Does, StepAct Act, string Tool, string Setting, double? Minutes, string Destroys, string Picture, string Plan = "");

using Lidoff.Evidence.Entries;
using Lidoff.Opening.Cautioning;

namespace Lidoff.Opening.Kinds;

/// <summary>A step that somebody means to do. The newest entry of a name counts; a step that names it carries it out.</summary>
/// <param name="Plan">Its name, such as P1.</param>
/// <param name="Does">What is to be done; empty when it was only dropped.</param>
/// <param name="Act">What sort of act it is; decides which cautions stand beside it.</param>
/// <param name="Destroys">What can no longer be seen or measured afterwards; empty for an act that can be taken back.</param>
/// <param name="RecordFirst">What must be recorded before: references such as <c>mass:CASE</c>, or words.</param>
/// <param name="Recorded">Those of them that a person says are recorded.</param>
/// <param name="After">Plans that come first.</param>
/// <param name="Why">Why; empty when not said.</param>
/// <param name="Dropped">True when it is not meant any more.</param>
public sealed record StepPlanned(
    string Plan, string Does, StepAct Act, string Destroys, ValueList<string> RecordFirst, ValueList<string> Recorded, ValueList<string> After, string Why, bool Dropped)
{
    /// <summary>True when something is lost for good by it.</summary>
    public bool Irreversible => Destroys.Length > 0;
}

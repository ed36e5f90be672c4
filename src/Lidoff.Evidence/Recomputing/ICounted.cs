namespace Lidoff.Evidence.Recomputing;

/// <summary>The values of one step, whatever their types.</summary>
internal interface ICounted
{
    StepCounts Counts { get; }

    void ResetCounts();
}

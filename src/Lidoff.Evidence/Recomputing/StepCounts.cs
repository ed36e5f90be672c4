namespace Lidoff.Evidence.Recomputing;

/// <summary>What the graph did for one step since the counts were last set to zero.</summary>
/// <param name="Step">The step's name.</param>
/// <param name="Computed">Times it ran.</param>
/// <param name="CutOff">Of these, times the value came out equal to the one before, so that nothing above had to run.</param>
/// <param name="Checked">Times something below had moved, but what it reads had come out equal: it did not run.</param>
/// <param name="Reused">Times a value was handed back at once because nothing below had moved.</param>
public sealed record StepCounts(string Step, long Computed, long CutOff, long Checked, long Reused);

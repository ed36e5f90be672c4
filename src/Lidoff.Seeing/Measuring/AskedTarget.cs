using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Measuring;

/// <summary>One target of a job: its name, and either the length to find or everything that is wrong with it.</summary>
public sealed record AskedTarget(string Id, Outcome<TargetLength> Length);

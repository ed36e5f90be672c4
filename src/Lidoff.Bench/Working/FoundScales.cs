using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Measuring.Rulers;
using Lidoff.Seeing.Measuring.Targets;

namespace Lidoff.Bench.Working;

/// <summary>What was found in a picture that can give its scale.</summary>
/// <param name="Sha256">The picture.</param>
/// <param name="Target">A checkerboard or dot grid, or why there is none that can serve.</param>
/// <param name="Rulers">Rulers, those with the most lines first; or why the picture could not be read.</param>
public sealed record FoundScales(string Sha256, Outcome<FoundTarget> Target, Outcome<ValueList<RulerProposal>> Rulers);

using Lidoff.Evidence.Entries;

namespace Lidoff.Seeing.Composing;

/// <summary>What is to be made of what.</summary>
/// <param name="Method">How.</param>
/// <param name="Pictures">The pictures in their order.</param>
/// <param name="StepMm">How far the focus moved towards the camera from slice to slice, mm (below zero: away from it); null where not known. Stacks only.</param>
/// <param name="UmPerPx">Scale of the first picture, µm a px, for residuals in µm; null where none is set.</param>
public sealed record ComposeOrder(ComposeMethod Method, ValueList<SourcePicture> Pictures, double? StepMm = null, double? UmPerPx = null);

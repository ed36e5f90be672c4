using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Composing;

namespace Lidoff.Seeing.Kinds;

/// <summary>
/// A picture that a machine made of pictures. Files are named by content hash; <see cref="Inputs"/> stand in the order in which they were
/// taken. <see cref="FirstAt"/> is where the first input's corner lies in the picture, px, where one px of it is one of that input's; null
/// where its geometry is its own. <see cref="RestPx"/> is what was left between the inputs, px (root mean square), <see cref="LoopPx"/>
/// the same around the worst closed loop. <see cref="Heights"/> are what the darkest and the brightest value of <see cref="Second"/>
/// stand for, slices or mm.
/// </summary>
public sealed record ComposedSighting(
    string Picture,
    string Second,
    ComposeMethod Method,
    ValueList<string> Inputs,
    ValueList<string> LeftOut,
    string Settings,
    string Program,
    PicturePoint? FirstAt,
    double? RestPx,
    double? LoopPx,
    (double From, double To)? Heights,
    bool HeightsInMm,
    ValueList<string> Says);

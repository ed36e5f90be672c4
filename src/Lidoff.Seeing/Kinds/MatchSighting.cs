using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Pictures;

namespace Lidoff.Seeing.Kinds;

/// <summary>
/// What a machine found in common in two pictures: a proposal, by which nothing lies on a board until a person takes its landmarks over.
/// Files are named by content hash; names and places stand in the same order.
/// </summary>
/// <param name="First">The first picture.</param>
/// <param name="Second">The second picture.</param>
/// <param name="Mirrored">True when left and right swap between them.</param>
/// <param name="Names">Names proposed for the landmarks.</param>
/// <param name="FirstPoints">Where they show in the first, px.</param>
/// <param name="SecondPoints">Where in the second, px.</param>
/// <param name="FirstUPx">Standard uncertainty of each coordinate in the first, px.</param>
/// <param name="SecondUPx">The same in the second.</param>
/// <param name="RestPx">How far each lies from where all together put it, px of the second.</param>
/// <param name="Agree">How many holes agreed, of which the landmarks are those best spread.</param>
/// <param name="Of">How many could have.</param>
/// <param name="ByChance">How many would agree by accident, on average.</param>
/// <param name="LogOdds">Decimal logarithm of how many matches as good chance would give among all tried.</param>
/// <param name="Settings">What it was found with.</param>
/// <param name="Program">Version of the program that found it.</param>
/// <param name="Says">What was said of it.</param>
public sealed record MatchSighting(
    string First,
    string Second,
    bool Mirrored,
    ValueList<string> Names,
    ValueList<PicturePoint> FirstPoints,
    ValueList<PicturePoint> SecondPoints,
    double FirstUPx,
    double SecondUPx,
    ValueList<double> RestPx,
    int Agree,
    int Of,
    double ByChance,
    double LogOdds,
    string Settings,
    string Program,
    ValueList<string> Says);

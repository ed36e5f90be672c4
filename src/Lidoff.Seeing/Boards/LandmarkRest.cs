namespace Lidoff.Seeing.Boards;

/// <summary>How far a landmark lies in one picture from where all pictures together put it.</summary>
/// <param name="Name">The landmark.</param>
/// <param name="Px">Distance in the picture, px.</param>
/// <param name="Um">Distance on the board, µm; null where nothing tells a length.</param>
/// <param name="Used">False where it was left out because it does not fit.</param>
/// <param name="Tested">False where no other picture and no known place speaks of it, so that nothing can be left.</param>
public sealed record LandmarkRest(string Name, double Px, double? Um, bool Used, bool Tested);

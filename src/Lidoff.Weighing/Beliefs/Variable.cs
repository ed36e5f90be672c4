namespace Lidoff.Weighing.Beliefs;

/// <summary>
/// Something nobody knows for sure and several rooms speak about: the identity of a spot, a pad's net, a cell. Its states are named and
/// exclude each other; one of them is usually "none". <paramref name="LogWeights"/> is what is said about it locally: natural logs of
/// prior times local evidence, one a state, up to a common constant; minus infinity rules a state out.
/// </summary>
public sealed record Variable(string Id, IReadOnlyList<string> States, IReadOnlyList<double> LogWeights);

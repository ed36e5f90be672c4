namespace Lidoff.Bench.Working;

/// <summary>What is known of a recording before its first second: written beside it, so that it can be kept whatever becomes of the program.</summary>
/// <param name="Dossier">Short name of the dossier it belongs to.</param>
/// <param name="Recording">Its own short name, V1 and so on; empty until it is begun.</param>
/// <param name="Voice">True when the microphone is on.</param>
/// <param name="Ending">Ending of its file name: "webm" or "mp4".</param>
/// <param name="Zoom">Zoom tag; may be empty.</param>
/// <param name="Light">How it is lit; may be empty.</param>
/// <param name="Camera">Which camera; may be empty.</param>
public sealed record RecordingFacts(string Dossier, string Recording, bool Voice, string Ending, string Zoom, string Light, string Camera);

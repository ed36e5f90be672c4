namespace Lidoff.Seeing.Kinds;

/// <summary>A video that was recorded at the bench.</summary>
/// <param name="Recording">Its short name, by which moments know it.</param>
/// <param name="File">Content hash of the video.</param>
/// <param name="Voice">True when the microphone was on: a voice is personal and stays on the machine.</param>
/// <param name="BrokeOff">True when it was not ended by hand: what had come until then was kept.</param>
/// <param name="Zoom">Zoom tag while it was recorded; may be empty. Hostile text, like the two after it.</param>
/// <param name="Light">How it was lit.</param>
/// <param name="Camera">Which camera took it.</param>
public sealed record RecordingSighting(string Recording, string File, bool Voice, bool BrokeOff, string Zoom, string Light, string Camera);

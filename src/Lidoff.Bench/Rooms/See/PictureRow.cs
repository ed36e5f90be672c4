namespace Lidoff.Bench.Rooms.See;

/// <summary>A file of a dossier.</summary>
/// <param name="FileName">Name it came under; hostile text.</param>
/// <param name="Sha256">64 lower-case hex digits.</param>
/// <param name="Kind">What it was recognised as, in words: "a JPEG picture".</param>
/// <param name="Bytes">Length in bytes.</param>
/// <param name="Width">Upright width in pixels; null when it is no picture or could not be opened.</param>
/// <param name="Height">Upright height in pixels; null likewise.</param>
/// <param name="Scale">Its scale in words with its doubt ("12.4 px/mm ± 0.4 %"); empty where none is set.</param>
/// <param name="Trouble">What is wrong with it, one sentence; empty when nothing is.</param>
/// <param name="Spots">How many spots were pointed at in it.</param>
/// <param name="Side">Side of the board it shows; empty where nobody said.</param>
/// <param name="Zoom">Its zoom tag; hostile text, may be empty.</param>
/// <param name="Light">How it was lit; hostile text, may be empty.</param>
/// <param name="Video">What it is in a few words where it is a video; empty for anything else.</param>
/// <param name="Burst">Its place in a burst; null for none.</param>
public sealed record PictureRow(
    string FileName, string Sha256, string Kind, long Bytes, int? Width, int? Height, string Scale = "", string Trouble = "", int Spots = 0, string Side = "", string Zoom = "", string Light = "", string Video = "", BurstFrame? Burst = null);

using Lidoff.Evidence.Entries;
using Lidoff.Seeing.Boards;

namespace Lidoff.Weighing.Modelling;

/// <summary>
/// A board with its pictures, the entries that it rests on (landmarks, known lengths and places, files; in id order), and the spots whose
/// recognised packages are among its known lengths, in ordinal order.
/// </summary>
public sealed record PictureBoard(LaidBoard Laid, ValueList<EntryId> RestsOn, ValueList<string> Packages);

using Lidoff.Evidence.Entries;
using Lidoff.Seeing.Boards;

namespace Lidoff.Weighing.Modelling;

/// <summary>A board with its pictures, and the entries that it rests on: landmarks, known lengths and places, files; in id order.</summary>
public sealed record PictureBoard(LaidBoard Laid, ValueList<EntryId> RestsOn);

namespace Lidoff.Telling.Drawing.Labelling;

/// <summary>The words around a labelled picture; each empty for none, all hostile text.</summary>
/// <param name="Title">Above it.</param>
/// <param name="Credit">Who made it, below it.</param>
/// <param name="Licence">Under which terms it may be used, after the credit.</param>
/// <param name="Notice">The dossier's notice, such as that the device is invented; shown above the picture in a colour of its own.</param>
public sealed record PictureWords(string Title = "", string Credit = "", string Licence = "", string Notice = "");

namespace Lidoff.Telling.Reporting;

/// <summary>
/// A picture that goes into the report: its file's name and hash in the dossier, its size when upright (px), and the name of the
/// copy in the report's folder, which carries neither place nor serial number.
/// </summary>
public sealed record ReportPicture(string Name, string Sha256, int Width, int Height, string File);

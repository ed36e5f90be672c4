using System.Globalization;

namespace Lidoff.Bench.Hosting;

/// <summary>The sentences a browser gets instead of a page.</summary>
internal static class BenchSentences
{
    public const string ForeignHost = "This workbench answers only to its own address on this machine.";

    public const string ForeignOrigin = "This was asked for from another page; the workbench takes orders only from its own.";

    public const string NoLogin = "This workbench is open to the browser that used its key. Stop it and start `lidoff bench` again for a new key.";

    public const string NotFound = "There is nothing here.";

    public const string NoDossier = "There is no dossier of that name.";

    public const string NoFile = "No file with that hash is stored here, or it was erased.";

    public const string NoPicture = "No picture can be made of that file.";

    public const string NoToken = "The page is older than this start of the workbench; load it again, then send the file once more.";

    public const string NoName = "The file came without a name; send it as ?name=…";

    public const string NoRoomForDossier = "No dossier could be begun; begin one with `lidoff new NAME`, then drop the file there.";

    public const string EmptyFile = "The file is empty; copy it again from where it came. Nothing of it was kept.";

    /// <summary>A file that is called a picture and holds something else.</summary>
    public static string NotAPicture(string fileName, string kind) => $"“{Showing.Shown.Of(fileName)}” is called a picture, but holds {kind}; it is kept as a file.";

    /// <summary>A file whose very bytes are in the dossier.</summary>
    public static string Already(string fileName, string known) => fileName == known
        ? $"“{Showing.Shown.Briefly(known)}” is here already, byte for byte; nothing was added."
        : $"“{Showing.Shown.Briefly(fileName)}” is here already, byte for byte, as “{Showing.Shown.Briefly(known)}”; nothing was added.";

    /// <summary>A picture that is damaged, and is evidence all the same.</summary>
    public static string KeptAllTheSame(string trouble) => trouble + " What came of it is stored all the same.";

    public const string BrokenOff = "The file broke off before its end; nothing of it was kept.";

    public const string OurFault = "Something went wrong in Lidoff itself. Nothing that was stored is lost; the command line says more.";

    public static string TooManyPages(int most) =>
        "No more than " + most.ToString(CultureInfo.InvariantCulture) + " pages can be open at once; close one.";

    public static string TooLarge(long most) =>
        "The file is larger than the " + Showing.Sizes.Bytes(most) + " that one upload may have; add it with `lidoff add`. Nothing of it was kept.";

    public static string Ready(string address) => "Lidoff is ready at " + address;

    /// <summary>The port is somebody else's.</summary>
    public static string PortTaken(string port, string why) =>
        $"Port {port} of this machine cannot be used: {why.TrimEnd('.')}. If a workbench runs there already, stop it where it was started (Ctrl+C); --port 0 takes a free port instead.";
}

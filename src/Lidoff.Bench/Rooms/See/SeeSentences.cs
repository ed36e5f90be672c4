using System.Globalization;
using Lidoff.Bench.Showing;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Measuring.Rulers;
using Lidoff.Seeing.Measuring.Targets;

namespace Lidoff.Bench.Rooms.See;

/// <summary>What the room See says: hints of what to do next, and of what was typed.</summary>
public static class SeeSentences
{
    /// <summary>A fresh picture.</summary>
    public const string ScaleFirst = "First the scale: click both ends of a length you know, or skip it with P.";

    /// <summary>Scale, second end.</summary>
    public const string ScaleSecond = "Now the other end.";

    /// <summary>Under the field of the scale.</summary>
    public const string ScaleHint = "26 mm ± 0.05, then behind commas where it matters: height 1.2 mm above the board, camera 180 mm away, package of U1 for a package you recognised.";

    /// <summary>While a ruler or target is looked for.</summary>
    public const string Finding = "Looking for a ruler or a target…";

    /// <summary>Under the field of a target's pitch.</summary>
    public const string PitchHint = "2 mm ± 0.01 from one to the next. Without a doubt it is that of a laser print, 0.4 %; \", glass\" makes it 0.06 %. Behind a comma: height 1.6 mm above the board.";

    /// <summary>Nothing at all.</summary>
    public const string NoRulerEither = "No ruler was found either: 23 lines or more must show, of which every fifth or tenth, or every eighth and so on, is longer. Where one lies there, click both ends of a length on it (S).";

    /// <summary>A ruler over its picture and beside it.</summary>
    public static string RulerSays(RulerProposal ruler) => ruler.TickMm is { } tick
        ? string.Create(CultureInfo.InvariantCulture, $"ruler, {ruler.Gaps} × {tick:0.######} mm")
        : string.Create(CultureInfo.InvariantCulture, $"ruler, {ruler.Gaps} gaps of {ruler.PeriodPx:0.#} px");

    /// <summary>What a ruler that tells its unit would make the scale, with the doubt of its print and of both its ends.</summary>
    public static string RulerMakes(RulerProposal ruler, double tickMm)
    {
        var known = ruler.Reference(tickMm);
        var ends = Math.Sqrt(2) * ruler.EndPx * tickMm / ruler.PeriodPx;
        return string.Create(CultureInfo.InvariantCulture, $"A ruler, {ruler.Gaps} gaps of {tickMm:0.######} mm: {Plain.With(known.LengthMm, Math.Sqrt((known.UMm * known.UMm) + (ends * ends)), "mm")}, which makes {ruler.PeriodPx / tickMm:0.###} px/mm.");
    }

    /// <summary>Under the field of a ruler's unit.</summary>
    public const string TickHint = "Its longer lines do not tell. Millimetres: 1 mm, half millimetres: 0.5 mm; an inch in 16, 32 or 64: 1.5875, 0.79375, 0.396875 mm.";

    /// <summary>A target beside its picture.</summary>
    public static string TargetSays(KnownTarget target) =>
        $"{(target.Pattern == TargetPattern.Checker ? "checkerboard" : "dot grid")}, pitch {Plain.With(target.PitchMm, target.PitchUMm, "mm")}, {Count.Of(target.Found, target.Pattern == TargetPattern.Checker ? "corner" : "dot")}";

    /// <summary>Pointing.</summary>
    public const string PointNext = "Click what you want to name. Arrow keys move a crosshair, Enter sets the point.";

    /// <summary>Under the field of a spot.</summary>
    public const string PointHint = "Words alone take the next free letter; U7 or J before them chooses it. What stands behind \"because\" is the why.";

    /// <summary>Landmark.</summary>
    public const string LandmarkNext = "Click the middle of a hole, via or corner that other pictures show too, of either side. Four far apart lay a picture on its board.";

    /// <summary>Under the field of a landmark.</summary>
    public const string LandmarkHint = "The same name in every picture that shows it, as printed or as you like: H1, via by the radio.";

    /// <summary>No name typed.</summary>
    public static Fault LandmarkMissing { get; } = new("landmark", "a name", "Which landmark is it? Give it the name that it has in the other pictures, or a new one.");

    /// <summary>No landmark in a picture yet.</summary>
    public const string NoLandmark = "No landmark yet: pictures of either side lie on one board by holes and vias they share. Point at them (K), or have them found.";

    /// <summary>A landmark twice in one picture.</summary>
    public static Fault LandmarkHere(string name) => new("landmark", "a landmark that is not yet pointed at in this picture", $"{name} is already pointed at in this picture. Move it with M, or give this one another name.");

    /// <summary>How a picture lies.</summary>
    public static string LiesOn(int others, int landmarks, bool mirrored) =>
        $"Lies on its board with {Count.Of(others, "other picture")}, by {Count.Of(landmarks, "landmark")} they share{(mirrored ? "; seen from below" : "")}.";

    /// <summary>Others show landmarks by these names, but not where they are here.</summary>
    public static string NotTogether(IReadOnlyList<string> pictures) => $"{string.Join(", ", pictures.Take(3).Select(Showing.Shown.Quoted))} {(pictures.Count == 1 ? "shows" : "show")} landmarks by the same names, but the places do not go together: several names stand for other things there, or it is another board.";

    /// <summary>No other picture has a landmark of this one.</summary>
    public const string AloneOnBoard = "No other picture shows two of these landmarks yet. Point at them there too.";

    /// <summary>Above the spots carried over.</summary>
    public const string GhostsAre = "Dashed on the picture: spots of other pictures of this side, where they lie here nine times in ten if they lie flat on the board. What stands up leans outwards.";

    /// <summary>Length, first end.</summary>
    public const string LengthNext = "Click both ends of what you want to know.";

    /// <summary>Under the field of a length.</summary>
    public const string LengthHint = "U1 width; behind a comma: height 1 mm above the board. Pitch and span of leads are known words.";

    /// <summary>Body, first corner.</summary>
    public const string BodyNext = "Click three corners of a body in turn: along one side, then along the next.";

    /// <summary>Body, on the way.</summary>
    public const string BodyOn = "Now the next corner.";

    /// <summary>While edges are looked for.</summary>
    public const string EdgesLooking = "Looking for edges …";

    /// <summary>What to do with fitted edges.</summary>
    public const string EdgesTake = "Enter takes the dashed outline over; your clicks are kept beside it. The key again stays with the clicks.";

    /// <summary>Several ends or sides stayed.</summary>
    public static string EdgesStayed(int count) => count == 1 ? "One stays as clicked. Why" : $"{count} of them stay as clicked. Why";

    /// <summary>How far an end or a side was moved.</summary>
    public static string EdgeMoved(string name, double shiftPx, double uPx) => string.Create(
        System.Globalization.CultureInfo.InvariantCulture, $"{name} {Math.Abs(shiftPx):0.0} ± {uPx:0.0} px {(shiftPx < 0 ? "inwards" : "outwards")}");

    /// <summary>Box, first corner.</summary>
    public const string BoxNext = "Click two corners across from one another, around a body or its mark alone: what the machine reads on the spot is looked for in there.";

    /// <summary>Box, second corner.</summary>
    public const string BoxOn = "Now the corner across from it.";

    /// <summary>Under the field of a box.</summary>
    public const string BoxHint = "Enter alone for the one shown in grey, U1, or what a new spot is; then I reads it. A turned body is outlined with B.";

    /// <summary>Two corners that are no box.</summary>
    public static Fault NoBox { get; } = new("box", "two corners across from one another", "These two corners lie in one row or column: click two that lie across from one another.");

    /// <summary>Of a spot that was outlined and not pointed at.</summary>
    public const string OutlinedOnly = "Its body was outlined here; what it is was said where it was pointed at.";

    /// <summary>How many parts a machine found.</summary>
    public static string PartsFound(Working.PartsFound found) => found.Parts.Count == 0 ? "" : string.Create(CultureInfo.InvariantCulture,
        $"{Count.Of(found.Parts.Count, "place")} with text found, {found.Parts.Count(part => part.HasBody)} of them on a body. Take those that are parts: each becomes a spot with a box and what was read.");

    /// <summary>Above what has no body.</summary>
    public const string PartsBodiless = "Marks of small parts and bare dies, and print of the board beside them.";

    /// <summary>Parts taken as spots, in the undo list.</summary>
    public static string PartsTaken(IReadOnlyList<string> spots) => spots is [var one] ? $"{one}, found by the machine" : $"{Count.Of(spots.Count, "spot")} found by the machine";

    /// <summary>Under the field of a body.</summary>
    public const string BodyHint = "U1, or Enter alone for the one shown in grey; behind a comma: height 0.85 mm of what you clicked above the board.";

    /// <summary>Moving.</summary>
    public const string MoveNext = "Drag a point or an end to its place; by keyboard: Enter on it, then Enter where it belongs.";

    /// <summary>Moving, in hand.</summary>
    public const string MoveOn = "In hand. Click or press Enter where it belongs; Esc leaves it.";

    /// <summary>Moving, nothing there.</summary>
    public const string NothingThere = "There is no point or end here; go nearer.";

    /// <summary>Looking.</summary>
    public const string LookNext = "Drag to move, wheel or + and − to zoom. Press a spot to see what it rests on.";

    /// <summary>Pointed at enough to show around.</summary>
    public const string Enough = "Good for showing around: E takes it home as SVG, Alt+E as PNG. Or point on.";

    /// <summary>The line to type on is there.</summary>
    public const string TypeNow = "Type it and press Enter; Esc leaves it.";

    /// <summary>A large picture for the first time.</summary>
    public const string MakingTiles = "Coarse for now: its tiles are being made.";

    /// <summary>The tiles were not made: stopped by a person, or they could not be.</summary>
    public const string NoTiles = "Shown coarsely: its tiles were not made.";

    /// <summary>Before the name of a picture whose scale is offered.</summary>
    public const string SameZoom = "The same camera and zoom as";

    /// <summary>A scale taken over, as the list of acts shows it.</summary>
    public static string CarriedOver(string from) => "scale of " + Showing.Shown.Briefly(from);

    /// <summary>When the microphone is asked for.</summary>
    public const string Voice = "The microphone is asked for only when a recording with voice begins. A voice stays on this machine: reports leave recordings out.";

    /// <summary>Beside a video.</summary>
    public const string VoiceStays = "Videos and the voices in them stay on this machine; reports leave them out.";

    /// <summary>Under a video.</summary>
    public const string StillsAre = "A still is a picture like any other, and remembers its video and second.";

    /// <summary>No moment yet.</summary>
    public const string NoMoment = "None yet. K notes the one in view, while it is recorded or here.";

    /// <summary>No still yet.</summary>
    public const string NoStill = "None yet. Go to a frame and press T.";

    /// <summary>The video is not here.</summary>
    public const string NoVideo = "There is no such video in this dossier.";

    /// <summary>A moment, as the list of acts shows it.</summary>
    public static string MomentNoted(string video, double second, string spot) => string.Create(
        CultureInfo.InvariantCulture, $"moment {second:0.0} s of {Showing.Shown.Briefly(video)}{(spot.Length > 0 ? ", " + Showing.Shown.Briefly(spot) : "")}");

    /// <summary>The same, of one that stands already.</summary>
    public static string MomentAt(double second) => string.Create(CultureInfo.InvariantCulture, $"the moment at {second:0.0} s");

    /// <summary>Places that make nothing for certain.</summary>
    public const string ShapeUnsure = "What these places make cannot be told to a tenth of itself: zoom in (+) and click them again, or say it and have the doubt told with it.";

    /// <summary>No scale.</summary>
    public const string NoScaleYet = "No scale yet: lengths come out once a known length is set (S).";

    /// <summary>No length typed.</summary>
    public static Fault ScaleMissing { get; } = new("length", "a length such as 26 mm ± 0.05", "How long is it? Write, for example, 26 mm ± 0.05.");

    /// <summary>No length of that sort.</summary>
    public static Fault NoRange(string typed) => new("length", "a value, with ± where it is in doubt", $"{Showing.Shown.Quoted(typed)} is a range; write the known length as 26 mm ± 0.05.");

    /// <summary>A length that is none.</summary>
    public static Fault NotPositive(string typed) => new("length", "a length above zero", $"{Showing.Shown.Quoted(typed)} is not above zero; between equal places there is no length.");

    /// <summary>A piece that says nothing.</summary>
    public static Fault NoSuchPiece(string piece, string known) => new("pieces", known, $"{Showing.Shown.Quoted(piece)} is not understood here; known are {known}.");

    /// <summary>A package of no one spot.</summary>
    public static Fault WhichPackage { get; } = new("package", "one designator such as U1", "Whose package is it? One spot's letter and number, as in package of U1.");

    /// <summary>No spot named.</summary>
    public static Fault WhichSpot { get; } = new("spot", "a designator such as U1", "Which spot does it belong to? Begin with its letter and number, as in U1 width.");

    /// <summary>No name of the length.</summary>
    public static Fault WhichLength(string spot) => new("what", "which length, such as width", $"Which length of {Showing.Shown.Briefly(spot)} is it? Write, for example, {Showing.Shown.Briefly(spot)} width.");

    /// <summary>A measure where the name of the length belongs.</summary>
    public static Fault NotItsName(string typed, string spot) => new("what", "which length, such as width", $"{Showing.Shown.Quoted(typed)} is how long something is; how long this is was just measured. Write which length it is, for example {Showing.Shown.Briefly(spot)} width.");

    /// <summary>Nothing typed at a point.</summary>
    public static Fault BareSpot(string spot) => new("role", "what it is", $"What is it? Type a few words, or press Enter once more to set {Showing.Shown.Briefly(spot)} without any.");

    /// <summary>A spot twice in one picture.</summary>
    public static Fault AlreadyHere(string spot, string free) => new("spot", "a spot that is not yet pointed at in this picture", $"{Showing.Shown.Briefly(spot)} is already pointed at in this picture. Move it with M, or take the next free one, {free}.");

    /// <summary>Under the field of a watched folder.</summary>
    public const string WatchHint = "The whole path of the folder that the microscope writes to. What lands there comes in once it stays the same for two looks.";

    /// <summary>Under the field of a mark.</summary>
    public const string MarkHint = "/ begins a line, ? or a blank is an unread place, * any number of them, 8|B is either, 8|_ is an 8 or nothing. A doubled sign is the sign itself.";

    /// <summary>Under the places of a mark.</summary>
    public const string MarkPlacesHint = "Type what stands there; arrow keys go back to a place, and a second key in it is kept beside the first. Enter notes it.";

    /// <summary>What the keys of a mark's places do: what a button does (empty where there is none), the key as the page hears it, as it is shown, and in words.</summary>
    public static IReadOnlyList<(string Act, string Key, string Shown, string Says)> MarkKeys { get; } =
    [
        ("", "arrowleft arrowright", "← →", "In a mark: the place before, the next one; over the end of a line too"),
        ("other", "arrowdown", "↓", "In a mark: keep what the first is usually taken for beside it"),
        ("first", "arrowup", "↑", "In a mark: the next alternative comes first"),
        ("unread", "?", "?", "In a mark: this place cannot be read; Space does the same"),
        ("nothing", "_", "_", "In a mark: maybe nothing is printed here"),
        ("line", "/", "/", "In a mark: begin a line here"),
        ("insert", "insert", "Ins", "In a mark: a place that was left out, before this one"),
        ("back", "backspace", "⌫", "In a mark: take away the last alternative, then the place"),
        ("delete", "delete", "Del", "In a mark: take away the place with all its alternatives"),
        ("", "|", "|", "In a mark: the next key is an alternative to the place before; Alt with that key does the same"),
        ("", "home end pageup pagedown", "Home End Pg", "In a mark: first and last place of a line, line above and below"),
        ("", "ctrl+z", "Ctrl Z", "In a mark: take back the last key, as long as it is not noted"),
        ("", "enter", "Enter", "In a mark: note it"),
    ];

    /// <summary>What stands on the buttons of a mark.</summary>
    public static IReadOnlyDictionary<string, string> MarkActs { get; } = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["other"] = "look-alike", ["first"] = "turn", ["unread"] = "unread", ["nothing"] = "maybe nothing", ["line"] = "new line", ["insert"] = "insert", ["back"] = "remove", ["delete"] = "whole place",
    };

    /// <summary>How alternatives are weighed.</summary>
    public const string MarkShares = "A place with alternatives keeps 5 % for any other character; the rest is shared as chosen. A line without any is stored as it was typed.";

    /// <summary>The presenter window before anything was shown.</summary>
    public const string NothingToPresent = "No picture yet. This window follows the picture that was last looked at in the room See.";

    /// <summary>No mark typed.</summary>
    public static Fault MarkMissing { get; } = new("lines", "at least one character", "Type what stands there, with ? for what cannot be read.");

    /// <summary>Alternatives without a character beside them.</summary>
    public static Fault LoneBar { get; } = new("lines", "a character on both sides of |", "A | stands between two characters that may be meant, as in 8|B; write || for the sign itself.");

    /// <summary>Any number of places, and alternatives.</summary>
    public static Fault StarAmongAlternatives { get; } = new("lines", "a line with * or with alternatives", "A line with alternatives is stored place by place and cannot hold a *. Write one ? for each unread place instead.");

    /// <summary>The picture is not here.</summary>
    public const string NoPicture = "There is no such picture in this dossier.";

    /// <summary>What a machine's look at a picture told of the camera: by how much the scale changes across the picture, percent; null where its edges told nothing.</summary>
    public static string Looked(double? slopePercent) => slopePercent is { } percent
        ? string.Create(CultureInfo.InvariantCulture, $"Its straight edges were looked at: the scale changes by about {percent:0.#} % across the picture, and lengths here allow for it.")
        : "Its edges were looked at: they tell nothing of the camera.";

    /// <summary>The shape tool, nothing clicked yet.</summary>
    public const string ShapeNext = "Click three places or more: on a circle's edge, one on each lead of a row, the corners of an outline in order, or arm, corner, arm of an angle.";

    /// <summary>The shape tool with too few places.</summary>
    public const string ShapeOn = "Go on: three places make a shape; more make it surer.";

    /// <summary>What may be typed for a shape.</summary>
    public const string ShapeHint = "J1 pitch, H1 circle, BT1 area or F1 angle; perhaps which one behind it (H1 circle bore), and height 1 mm. More places may still be clicked.";

    /// <summary>No shape was named.</summary>
    public static Fault WhichShape { get; } = new("shape", "circle, pitch, angle or area", "Say what the places make: circle, pitch, angle or area.");

    /// <summary>An angle by another number of places.</summary>
    public static Fault AngleOfThree(int places) => new("points", "three places", $"An angle has three places (arm, corner, arm), but {places} were clicked.");
}

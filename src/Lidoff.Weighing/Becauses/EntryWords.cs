using System.Globalization;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Pictures;
using Lidoff.Naming.Kinds;
using Lidoff.Opening.Kinds;
using Lidoff.Reckoning.Bound;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Measuring.Targets;
using Lidoff.Tracing.Kinds;
using Lidoff.Weighing.Modelling;
using Lidoff.Weighing.Questions;

namespace Lidoff.Weighing.Becauses;

/// <summary>What an entry says, in one sentence for people, and the picture it was made in; report and drawer say the same.</summary>
public static class EntryWords
{
    // Numbers stand as they were noted, to a millionth of their unit: a because must not round away what it rests on.

    /// <summary>Stands for payloads that have no sentence of their own.</summary>
    public const string AsWritten = "as written.";

    /// <summary>The sentence of a payload; with the dossier's model its pictures stand under their names and not under their hashes.</summary>
    public static string Say(object? payload, DossierModel? model = null) => payload switch
    {
        DossierOpened opened => $"dossier{Colon(opened.Title)}.",
        FileAdded file => Text($"file {file.Name}, {file.Bytes} bytes."),
        ScaleSighting { Reference.Target: { } target } scale => Text($"a {(target.Pattern == TargetPattern.Checker ? "checkerboard" : "dot grid")} with a pitch of {target.PitchMm:0.######}{Doubt(target.PitchUMm)} mm in {Named(scale.Picture, model)}, {target.Found} {(target.Pattern == TargetPattern.Checker ? "corners" : "dots")} found."),
        ScaleSighting scale => Text($"a known length of {scale.Reference.LengthMm:0.######}{Doubt(scale.Reference.UMm)} mm in {Named(scale.Picture, model)}, from {Point(scale.Reference.From)} to {Point(scale.Reference.To)} px{(scale.CarriedFrom.Length > 0 ? ", carried over from " + Named(scale.CarriedFrom, model) : "")}{(scale.Package.Length > 0 ? ", the recognised package of " + scale.Package : "")}."),
        LengthSighting { InPicture: { } clicked } length => $"{length.What} of {length.Spot} clicked in {Named(clicked.Picture, model)}, from {Point(clicked.From)} to {Point(clicked.To)} px{(clicked.EndsBy.Length > 0 ? $", moved there by {clicked.EndsBy} from where it was clicked ({string.Join(", ", clicked.Clicked.Select(Point))})" : "")}.",
        LengthSighting { ByInstrument: { } read } by => Text($"{by.What} of {by.Spot}: {read.Mm:0.######}{Doubt(read.UMm)} mm with {(read.Instrument.Length > 0 ? read.Instrument : "an instrument")}."),
        ClickedShape shape => $"{shape.What} of {shape.Spot} ({ClickedShapeKind.Shapes.First(each => each.Shape == shape.Shape).Word}) by {shape.Points.Count} places {(shape.EndsBy.Length > 0 ? $"of an edge that {shape.EndsBy} found near {shape.Clicked.Count} clicked ones" : "clicked")} in {Named(shape.Picture, model)}, the first at {Point(shape.Points[0])} px.",
        LandmarkSighting landmark => $"landmark {landmark.Landmark}{(landmark.FoundBy.Length > 0 ? ", found by a machine and taken over," : "")}{(landmark.At is { } at ? $" in {Named(landmark.Picture, model)} at {Point(at)} px" : "")}{(landmark is { XMm: { } x, YMm: { } y } ? Text($", known to lie at ({x:0.######}, {y:0.######}){Doubt(landmark.UMm)} mm") : "")}.",
        MarkSighting mark => $"mark on {mark.Spot}: {mark.Written}.",
        ReadingSighting { Mark: { } read } reading => $"a machine read the mark on {reading.Spot} in {string.Join(" and ", reading.Pictures.Select(picture => Named(picture, model)))}: {read.Written} (all of it right with {ValueText.Percent(reading.P)}).",
        ReadingSighting { Bands.Count: > 0 } bands => $"a machine saw colour bands on {bands.Spot} in {Named(bands.Pictures[0], model)}: {bands.BandsWritten}.",
        ReadingSighting reading => $"a machine read nothing on {reading.Spot} in {string.Join(" and ", reading.Pictures.Select(picture => Named(picture, model)))}.",
        BodySighting body => Text($"body of {body.Spot}: {body.FirstMm:0.######} × {body.SecondMm:0.######} mm{(body.UMm > 0 ? ", each" + Doubt(body.UMm) : "")}."),
        PitchSighting pitch => Text($"pitch of {pitch.Spot}: {pitch.Mm:0.######}{Doubt(pitch.UMm)} mm."),
        SpotSighting spot => $"spot {spot.Spot}{Colon(spot.Role)}.",
        PictureSighting picture => $"{Named(picture.File, model)} is a picture of the specimen.",
        MatchSighting match => $"a machine found {match.Agree} of {match.Of} holes of {Named(match.First, model)} in {Named(match.Second, model)}{(match.Mirrored ? ", mirrored" : "")}.",
        ComposedSighting made => $"{Named(made.Picture, model)} was made as {Made(made.Method)} of {string.Join(", ", made.Inputs.Select(input => Named(input, model)))}{(made.RestPx is { } rest ? Text($"; {rest:0.##} px left between them") : "")}.",
        UnreadSighting unread => $"a machine could not read the mark on {unread.Spot}: {string.Join(" ", unread.Says)}",
        LookSighting look => $"a machine looked at {Named(look.Picture, model)}: {(look.Edges.Count > 0 ? "its straight edges tell how the camera stood" : "its edges tell nothing of the camera")}{(look.WordsMirrored ? "; its words read mirrored" : "")}.",
        BurstSighting burst => Text($"burst {burst.Burst} of {burst.Frames.Count} frames."),
        RecordingSighting recording => $"recording {recording.Recording} {(recording.Voice ? "with" : "without")} voice.",
        MomentSighting moment => Text($"moment at {moment.Second:0.###} s of {Named(moment.Recording, model)}{(moment.Spot.Length > 0 ? ", " + moment.Spot : "")}{Colon(moment.Says)}."),
        StillSighting still => Text($"{Named(still.File, model)} is the frame at {still.Second:0.###} s of {Named(still.Video, model)}."),
        ReckonBinding reckoning => $"reckoning {reckoning.Reckoning}: {reckoning.Calculation} of {string.Join(", ", reckoning.Inputs.Select(input => $"{input.Key} {(input.From.Length > 0 ? input.From : input.Typed)}"))}.",
        IdentityDecision decision => $"decision on {decision.Spot}: {Says(decision.Verdict)}{(decision.Part.Length > 0 ? " " + decision.Part : "")}, because {decision.Why}.",
        SpecimensAlike alike => $"specimens {string.Join(", ", alike.Specimens)} are alike at {alike.Spot}, because {alike.Why}.",
        PinsSighting pins => $"pins of {pins.Spot}: {pins.Count?.ToString(CultureInfo.InvariantCulture) ?? "not counted"}{(pins.Ground.Count > 0 ? ", on ground " + string.Join(", ", pins.Ground) : "")}.",
        BusSighting bus => Text($"{bus.Spot} answered on a bus{(bus.Address is { } address ? $" at 0x{address:x2}" : "")}."),
        IdentitySighting identity => Text($"{(identity.Spot.Length > 0 ? identity.Spot : "a part")} returned 0x{identity.Value:x2} from register 0x{identity.Register:x2}."),
        SupplySighting supply => Text($"supply of {supply.Spot}: {supply.V:0.######}{Doubt(supply.UV)} V."),
        MassSighting mass => Text($"mass of {(mass.Spot.Length > 0 ? mass.Spot : "the whole")}: {mass.G:0.######}{Doubt(mass.UG)} g."),
        TouchSighting touch => $"touch of {touch.A.Text} and {touch.B.Text}: {Reading(touch)}.",
        NetDrawn net => $"net {net.Net} drawn by hand: {string.Join(", ", net.Points.Select(point => point.Text))}.",
        RailDrawn rail => $"rail {rail.Rail}{Rail(rail)}.",
        PadSighting pad => $"pad {pad.Point.Text}{Colon(pad.Name)}.",
        SpecimenSighting specimen => $"specimen {specimen.Specimen}{Colon(specimen.Says)}.",
        StateSighting state => $"state {state.Name}{Colon(state.Says)}{(state.Current.Length > 0 ? ", " + state.Current : "")}.",
        StepSighting step => $"step: {step.Does}{(step.Destroys.Length > 0 ? "; destroyed " + step.Destroys : "")}.",
        StepPlanned plan => $"plan {plan.Plan}{Colon(plan.Does)}{(plan.Recorded.Count > 0 ? ", recorded: " + string.Join("; ", plan.Recorded) : "")}{(plan.Dropped ? ", dropped" : "")}.",
        BenchLeft left => $"bench left{Colon(left.InHand)}.",
        CellSighting cell => $"cell{Blank(cell.Spot)}{Cell(cell)}.",
        QuestionAsked question => $"question {question.Question}{Colon(question.Text)}{(question.Dropped ? ", dropped" : "")}",
        _ => AsWritten,
    };

    /// <summary>The picture a payload was made in, as it names it; empty where there is none.</summary>
    public static string Picture(object? payload) => payload switch
    {
        FileAdded file => file.Sha256,
        ScaleSighting scale => scale.Picture,
        LengthSighting { InPicture: { } clicked } => clicked.Picture,
        ClickedShape shape => shape.Picture,
        SpotSighting spot => spot.Picture,
        LandmarkSighting landmark => landmark.Picture,
        PictureSighting picture => picture.File,
        ComposedSighting made => made.Picture,
        LookSighting look => look.Picture,
        ReadingSighting reading => reading.Pictures[0],
        UnreadSighting unread => unread.Places[0].Picture,
        MatchSighting match => match.First,
        PadSighting pad => pad.Picture,
        StillSighting still => still.File,
        StepSighting step => step.Picture,
        _ => "",
    };

    private static string Made(Seeing.Composing.ComposeMethod method) => method switch
    {
        Seeing.Composing.ComposeMethod.Stack => "a focus stack",
        Seeing.Composing.ComposeMethod.Stitch => "a stitched board",
        Seeing.Composing.ComposeMethod.Lights => "a light set",
        _ => "an average",
    };

    /// <summary>The spot a payload is about; empty where it is about none or several.</summary>
    public static string Spot(object? payload) => payload switch
    {
        LengthSighting length => length.Spot,
        MarkSighting mark => mark.Spot,
        ReadingSighting reading => reading.Spot,
        UnreadSighting unread => unread.Spot,
        BodySighting body => body.Spot,
        PitchSighting pitch => pitch.Spot,
        SpotSighting spot => spot.Spot,
        MomentSighting moment => moment.Spot,
        IdentityDecision decision => decision.Spot,
        SpecimensAlike alike => alike.Spot,
        PinsSighting pins => pins.Spot,
        BusSighting bus => bus.Spot,
        IdentitySighting identity => identity.Spot,
        SupplySighting supply => supply.Spot,
        MassSighting mass => mass.Spot,
        PadSighting pad => pad.Spot,
        CellSighting cell => cell.Spot,
        _ => "",
    };

    private static string Cell(CellSighting cell)
    {
        var said = new List<string>();
        if (cell.Volts is { } volts) said.Add(Text($"{volts:0.######} V"));
        if (cell.Ohms is { } ohms) said.Add(Text($"{ohms:0.######} Ω inside"));
        if (cell.Printed.Length > 0) said.Add($"printed “{cell.Printed}”");
        if (cell.Mm is { Count: 3 } mm) said.Add(Text($"{mm[0]:0.######} × {mm[1]:0.######} × {mm[2]:0.######} mm"));
        if (cell.Connected is { } connected) said.Add(connected ? "connected" : "disconnected");
        if (cell.Damaged == true) said.Add("damaged");
        return string.Concat(said.Select(each => ", " + each));
    }

    private static string Rail(RailDrawn rail)
    {
        var volts = rail.V is { } v ? Text($", {v:0.######}{Doubt(rail.UV)} V") : "";
        var ends = $"{(rail.From.Length > 0 ? " from " + rail.From : "")}{(rail.To.Count > 0 ? " to " + string.Join(", ", rail.To) : "")}";
        return volts.Length > 0 && ends.Length > 0 ? volts + "," + ends : volts + ends;
    }

    // No doubt was noted where it is zero: "± 0" would claim what no instrument can. One too small for six decimals keeps its first digits.
    private static string Doubt(double? u) => u is > 0 and var known ? known < 5e-7 ? Text($" ± {known:0.##E+0}") : Text($" ± {known:0.######}") : "";

    private static string Named(string picture, DossierModel? model) => model?.Picture(picture) is { Found: true } found ? found.Name : picture;

    private static string Reading(TouchSighting touch)
    {
        var said = new List<string>();
        if (touch.Open) said.Add("open");
        if (touch.Beep is { } beep) said.Add(beep ? "beep" : "no beep");
        if (touch.Ohms is { } ohms) said.Add(Text($"{ohms:0.######} Ω"));
        if (touch.Volts is { } volts) said.Add(Text($"{volts:0.######} V"));
        return string.Join(", ", said);
    }

    private static string Says(Verdict verdict) => verdict switch
    {
        Verdict.Accept => "accepted as",
        Verdict.Family => "accepted as one of the family",
        Verdict.Reject => "rejected",
        _ => "not in any list",
    };

    private static string Colon(string text) => text.Length > 0 ? ": " + text : "";

    private static string Blank(string text) => text.Length > 0 ? " " + text : "";

    private static string Point(PicturePoint point) => Text($"({point.X:0.#}, {point.Y:0.#})");

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}

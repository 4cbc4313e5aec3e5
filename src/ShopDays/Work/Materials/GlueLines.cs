using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Work.Materials;

/// <summary>
/// How much surface is glued. Panels are reckoned by the joints between their strips; the joints of a glue-up by their two
/// cheeks, of dovetails by the cheeks of their tails and the end between, of dados by their floor and shoulders, which is near
/// enough for a glue pot. Where nothing is written of what is glued, each piece is glued at one end (common practice, no source).
/// </summary>
internal sealed class GlueLines(Job job, Layout layout, OperationCatalogue operations)
{
    // What a joint without figures of its own is taken for; the same that its time is reckoned by.
    private static readonly Length Usual = Length.FromInches(1.5m);

    // Boards of a panel whose strips are not laid out are taken for so wide.
    private static readonly Length UsualStrip = Length.FromInches(6m);

    /// <summary>The surface of a panel's joints, all of the part's panels together.</summary>
    public Area OfPanel(Part part)
    {
        var strips = layout.Boards.SelectMany(board => board.Blanks).Where(blank => blank.Blank.Part == part).Select(blank => blank.Blank.Strips).DefaultIfEmpty((int)Math.Ceiling(part.Width / UsualStrip)).Max();
        return part.Length * part.Thickness * Math.Max(0, strips - 1) * part.Count;
    }

    /// <summary>The surface of the joints that a glue-up closes.</summary>
    public Area OfGlueUp(GlueUp glueUp)
    {
        var joints = GlueUps.GluedIn(job, glueUp, operations).Aggregate(Area.Zero, (sum, joint) => sum + OfJoint(joint));
        return joints > Area.Zero ? joints : OfEnds(glueUp);
    }

    // What is glued to a glue-up that is together already is what counts, unless there is nothing but those.
    private Area OfEnds(GlueUp glueUp)
    {
        var own = job.Parts.Where(part => glueUp.Joins.Contains(part.Name)).ToList();
        var parts = own.Count > 0 ? own : [.. Holders.PartsOf(glueUp.Name, job)];
        return parts.Aggregate(Area.Zero, (sum, part) => sum + (part.Width * part.Thickness * part.Count));
    }

    private Area OfJoint(Joint joint)
    {
        if (joint.Tails > 0)
        {
            var thickness = joint.Thickness > Length.Zero ? joint.Thickness : job.Parts.Where(part => joint.Parts.Contains(part.Name)).Select(part => part.Thickness).Min();
            var width = job.Parts.Where(part => joint.Parts.Contains(part.Name)).Select(part => part.Width).Min();
            return ((thickness * thickness * (2 * joint.Tails)) + (thickness * width)) * joint.Count;
        }

        if (JointKinds.DadoIn(joint, operations) is { } dado)
        {
            // Its length is that of all of them together. What goes into it is as thick as it is wide: the thinnest of its parts.
            var parts = job.Parts.Where(part => joint.Parts.Contains(part.Name)).ToList();
            var wide = joint.Width > Length.Zero ? joint.Width : joint.Thickness > Length.Zero ? joint.Thickness : parts.Select(part => part.Thickness).DefaultIfEmpty(Usual).Min();
            return JointCuts.LengthOf(joint, dado, parts) * (wide + ((joint.Depth > Length.Zero ? joint.Depth : dado.Depth) * 2));
        }

        var depth = joint.Depth > Length.Zero ? joint.Depth : Usual;
        var along = joint.Length > Length.Zero ? joint.Length : joint.Width > Length.Zero ? joint.Width : Usual;
        return along * depth * 2 * joint.Count;
    }
}

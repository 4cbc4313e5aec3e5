using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Work.Materials;

/// <summary>
/// How much surface is glued. Panels are reckoned by the joints between their strips; the joints of a glue-up by their two
/// cheeks, of dovetails by the cheeks of their tails and the end between, which is near enough for a glue pot (common
/// practice, no source).
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
    public Area OfGlueUp(GlueUp glueUp) => GlueUps.ClosedIn(job, glueUp, operations).Aggregate(Area.Zero, (sum, joint) => sum + OfJoint(joint));

    private Area OfJoint(Joint joint)
    {
        if (joint.Tails > 0)
        {
            var thickness = joint.Thickness > Length.Zero ? joint.Thickness : job.Parts.Where(part => joint.Parts.Contains(part.Name)).Select(part => part.Thickness).Min();
            var width = job.Parts.Where(part => joint.Parts.Contains(part.Name)).Select(part => part.Width).Min();
            return ((thickness * thickness * (2 * joint.Tails)) + (thickness * width)) * joint.Count;
        }

        var depth = joint.Depth > Length.Zero ? joint.Depth : Usual;
        var along = joint.Length > Length.Zero ? joint.Length : joint.Width > Length.Zero ? joint.Width : Usual;
        return along * depth * 2 * joint.Count;
    }
}

using System.Globalization;
using System.IO.Compression;
using System.Xml.Linq;
using Xunit;

namespace ShopDays.Cli.Tests.Sheets;

/// <summary>Reads a workbook back as what it is, a zip file of XML (ISO/IEC 29500-1, 18), without the library that wrote it.</summary>
internal sealed class ReadWorkbook : IDisposable
{
    private static readonly XNamespace Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private static readonly XNamespace Relations = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

    private readonly ZipArchive zip;
    private readonly List<string> formats;

    public ReadWorkbook(byte[] file)
    {
        zip = new(new MemoryStream(file));
        var styles = Part("xl/styles.xml");
        var custom = styles.Descendants(Main + "numFmt").ToDictionary(one => (string)one.Attribute("numFmtId")!, one => (string)one.Attribute("formatCode")!);
        formats = [.. styles.Element(Main + "cellXfs")!.Elements(Main + "xf").Select(one => custom.GetValueOrDefault((string?)one.Attribute("numFmtId") ?? "0", "General"))];
    }

    /// <summary>The names of the sheets, in their order.</summary>
    public IReadOnlyList<string> Sheets => [.. Part("xl/workbook.xml").Descendants(Main + "sheet").Select(one => (string)one.Attribute("name")!)];

    /// <summary>How many rows at its head stay where they are.</summary>
    public int FrozenRows(string sheet) => (int?)Sheet(sheet).Descendants(Main + "pane").SingleOrDefault(one => (string?)one.Attribute("state") == "frozen")?.Attribute("ySplit") ?? 0;

    /// <summary>The widths of the columns.</summary>
    public IReadOnlyList<double> Widths(string sheet) => [.. Sheet(sheet).Descendants(Main + "col").Select(one => (double)one.Attribute("width")!)];

    /// <summary>Whether anything in it is to be reckoned.</summary>
    public bool HasFormulas => Sheets.Any(sheet => Sheet(sheet).Descendants(Main + "f").Any());

    /// <summary>The rows below the heads: by the head of its column each field as text, as a number, as a date, or null.</summary>
    public IReadOnlyList<IReadOnlyDictionary<string, object?>> Rows(string sheet)
    {
        var rows = Sheet(sheet).Descendants(Main + "row").Select(row => row.Elements(Main + "c").Select(Value).ToList()).ToList();
        var heads = rows[0].Select(head => Assert.IsType<string>(head)).ToList();
        return [.. rows.Skip(1).Select(row => heads.Select((head, place) => (head, Value: place < row.Count ? row[place] : null)).ToDictionary(one => one.head, one => one.Value))];
    }

    public void Dispose() => zip.Dispose();

    private object? Value(XElement cell)
    {
        if ((string?)cell.Attribute("t") == "inlineStr")
        {
            return string.Concat(cell.Descendants(Main + "t").Select(one => one.Value));
        }

        Assert.Null(cell.Attribute("t"));
        if (cell.Element(Main + "v") is not { } value)
        {
            return null;
        }

        var number = double.Parse(value.Value, NumberStyles.Float, CultureInfo.InvariantCulture);
        return formats[(int?)cell.Attribute("s") ?? 0].Contains("yyyy", StringComparison.Ordinal) ? DateTime.FromOADate(number) : number;
    }

    private XElement Sheet(string name)
    {
        var id = (string)Part("xl/workbook.xml").Descendants(Main + "sheet").Single(one => (string)one.Attribute("name")! == name).Attribute(Relations + "id")!;
        var target = (string)Part("xl/_rels/workbook.xml.rels").Elements().Single(one => (string)one.Attribute("Id")! == id).Attribute("Target")!;
        return Part(target.StartsWith('/') ? target[1..] : "xl/" + target);
    }

    private XElement Part(string name)
    {
        using var stream = zip.GetEntry(name)!.Open();
        return XElement.Load(stream);
    }
}

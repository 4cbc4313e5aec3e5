using ShopDays.Work;

namespace ShopDays.Cli.Files;

/// <summary>A shop and all its jobs, all their files read without a mistake.</summary>
/// <param name="Folder">The shop's folder.</param>
/// <param name="Shop">The shop.</param>
/// <param name="Operations">The operations, the shop's own among them.</param>
/// <param name="Jobs">The jobs, by the names of their files in ordinal order.</param>
internal sealed record ShopAndJobs(ShopFolder Folder, Shop Shop, OperationCatalogue Operations, IReadOnlyList<ShopAndJob> Jobs)
{
    /// <summary>
    /// Reads the files of a shop and all its jobs; the mistakes of all of them come together. One job with a mistake leaves
    /// nothing: without it, hours that it may need would be promised to others.
    /// </summary>
    /// <param name="folder">The shop's folder.</param>
    /// <param name="now">The moment; null where none of it matters.</param>
    /// <exception cref="FileTroubleException">A file is missing or cannot be read.</exception>
    public static (ShopAndJobs? Read, IReadOnlyList<Finding> Findings) Read(ShopFolder folder, NodaTime.Instant? now = null)
    {
        var findings = new Findings();
        var operations = RatesFile.OperationsIn(folder, findings);
        var shop = ShopFile.Read(folder.Read(ShopFolder.ShopFileName), operations, findings).Shop;
        List<ShopAndJobReading> jobs = [.. folder.JobNames().Select(name => ShopAndJob.Read(Path.Combine(folder.Jobs, name + ShopFolder.JobFileEnding), folder.Path, now))];
        List<Finding> all = [.. findings.InOrder().Concat(jobs.SelectMany(job => job.Findings)).Distinct()];
        return all.Count > 0 ? (null, all) : (new(folder, shop!, operations, [.. jobs.Select(job => job.Read!)]), []);
    }
}

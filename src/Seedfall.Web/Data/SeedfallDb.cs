using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage.ValueConversion;

namespace Seedfall.Web.Data;

/// <summary>The database: lawns, seasons, field log, photographs, spreaders, weather. Instants are stored as unix milliseconds, which order as numbers do.</summary>
internal sealed class SeedfallDb(DbContextOptions<SeedfallDb> options) : DbContext(options)
{
    public DbSet<LawnRow> Lawns => Set<LawnRow>();

    public DbSet<SeasonRow> Seasons => Set<SeasonRow>();

    public DbSet<LogRow> Log => Set<LogRow>();

    public DbSet<PhotoSpotRow> PhotoSpots => Set<PhotoSpotRow>();

    public DbSet<PhotoRow> Photos => Set<PhotoRow>();

    public DbSet<SpreaderRow> Spreaders => Set<SpreaderRow>();

    public DbSet<SpreaderEntryRow> SpreaderEntries => Set<SpreaderEntryRow>();

    public DbSet<WeatherRow> Weather => Set<WeatherRow>();

    protected override void ConfigureConventions(ModelConfigurationBuilder configurationBuilder) =>
        configurationBuilder.Properties<DateTimeOffset>().HaveConversion<UnixMilliseconds>();

    protected override void OnModelCreating(ModelBuilder modelBuilder)
    {
        modelBuilder.Entity<LawnRow>(lawn =>
        {
            lawn.HasKey(l => l.Id);
            lawn.Property(l => l.Id).HasMaxLength(64);
            lawn.Property(l => l.Version).IsConcurrencyToken();
            lawn.HasOne(l => l.Weather).WithMany().HasForeignKey(l => l.WeatherId).OnDelete(DeleteBehavior.Restrict);
            lawn.HasMany(l => l.Seasons).WithOne().HasForeignKey(s => s.LawnId).OnDelete(DeleteBehavior.Cascade);
        });
        modelBuilder.Entity<SeasonRow>(season =>
        {
            season.HasKey(s => new { s.LawnId, s.Year });
            season.Property(s => s.Version).IsConcurrencyToken();
        });
        modelBuilder.Entity<LogRow>(log =>
        {
            log.HasKey(l => l.Id);
            log.HasIndex(l => l.LawnId);
            log.HasOne<LawnRow>().WithMany().HasForeignKey(l => l.LawnId).OnDelete(DeleteBehavior.Cascade);
        });
        modelBuilder.Entity<WeatherRow>().HasKey(w => w.Id);
        modelBuilder.Entity<PhotoSpotRow>(spot =>
        {
            spot.HasKey(s => s.Id);
            spot.HasOne<LawnRow>().WithMany().HasForeignKey(s => s.LawnId).OnDelete(DeleteBehavior.Cascade);
            spot.HasMany(s => s.Photos).WithOne().HasForeignKey(p => p.SpotId).OnDelete(DeleteBehavior.Cascade);
        });
        modelBuilder.Entity<PhotoRow>(photo =>
        {
            photo.HasKey(p => p.Id);
            photo.HasIndex(p => p.LawnId);
            photo.Property(p => p.Version).IsConcurrencyToken();
        });
        modelBuilder.Entity<SpreaderRow>(spreader =>
        {
            spreader.HasKey(s => s.Id);
            spreader.Property(s => s.Id).HasMaxLength(64);
            spreader.HasMany(s => s.Entries).WithOne().HasForeignKey(e => e.SpreaderId).OnDelete(DeleteBehavior.Cascade);
        });
        modelBuilder.Entity<SpreaderEntryRow>(entry =>
        {
            entry.HasKey(e => e.Id);
            entry.HasIndex(e => e.SpreaderId);
        });
    }

    private sealed class UnixMilliseconds() : ValueConverter<DateTimeOffset, long>(
        instant => instant.ToUnixTimeMilliseconds(),
        stored => DateTimeOffset.FromUnixTimeMilliseconds(stored));
}

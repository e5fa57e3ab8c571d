using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Design;

namespace Seedfall.Web.Data;

/// <summary>Lets <c>./dev migrate NAME</c> build the model without starting the app.</summary>
internal sealed class SeedfallDbDesign : IDesignTimeDbContextFactory<SeedfallDb>
{
    public SeedfallDb CreateDbContext(string[] args) =>
        new(new DbContextOptionsBuilder<SeedfallDb>().UseSqlite("Data Source=:memory:").Options);
}

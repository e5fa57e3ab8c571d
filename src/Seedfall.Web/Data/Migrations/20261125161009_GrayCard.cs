using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Seedfall.Web.Data.Migrations
{
    /// <inheritdoc />
    public partial class GrayCard : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(
                name: "Card",
                table: "Photos",
                type: "TEXT",
                nullable: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropColumn(
                name: "Card",
                table: "Photos");
        }
    }
}

using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Seedfall.Web.Data.Migrations
{
    /// <inheritdoc />
    public partial class Spreaders : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "Spreaders",
                columns: table => new
                {
                    Id = table.Column<string>(type: "TEXT", maxLength: 64, nullable: false),
                    Document = table.Column<string>(type: "TEXT", nullable: false),
                    Added = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Spreaders", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "SpreaderEntries",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    SpreaderId = table.Column<string>(type: "TEXT", nullable: false),
                    At = table.Column<long>(type: "INTEGER", nullable: false),
                    Document = table.Column<string>(type: "TEXT", nullable: false),
                    Received = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_SpreaderEntries", x => x.Id);
                    table.ForeignKey(
                        name: "FK_SpreaderEntries_Spreaders_SpreaderId",
                        column: x => x.SpreaderId,
                        principalTable: "Spreaders",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateIndex(
                name: "IX_SpreaderEntries_SpreaderId",
                table: "SpreaderEntries",
                column: "SpreaderId");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "SpreaderEntries");

            migrationBuilder.DropTable(
                name: "Spreaders");
        }
    }
}

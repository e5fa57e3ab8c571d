using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Seedfall.Web.Data.Migrations
{
    /// <inheritdoc />
    public partial class Photographs : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "PhotoSpots",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    LawnId = table.Column<string>(type: "TEXT", nullable: false),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    PatchId = table.Column<string>(type: "TEXT", nullable: true),
                    StandOn = table.Column<string>(type: "TEXT", nullable: true),
                    IsOverview = table.Column<bool>(type: "INTEGER", nullable: false),
                    Added = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_PhotoSpots", x => x.Id);
                    table.ForeignKey(
                        name: "FK_PhotoSpots_Lawns_LawnId",
                        column: x => x.LawnId,
                        principalTable: "Lawns",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "Photos",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    SpotId = table.Column<Guid>(type: "TEXT", nullable: false),
                    LawnId = table.Column<string>(type: "TEXT", nullable: false),
                    Taken = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    Added = table.Column<long>(type: "INTEGER", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                    Width = table.Column<int>(type: "INTEGER", nullable: false),
                    Height = table.Column<int>(type: "INTEGER", nullable: false),
                    Cover = table.Column<double>(type: "REAL", nullable: true),
                    CoverLow = table.Column<double>(type: "REAL", nullable: true),
                    CoverHigh = table.Column<double>(type: "REAL", nullable: true),
                    Flags = table.Column<string>(type: "TEXT", nullable: false),
                    Taps = table.Column<string>(type: "TEXT", nullable: false),
                    WorthTapping = table.Column<string>(type: "TEXT", nullable: false),
                    Marks = table.Column<string>(type: "TEXT", nullable: true),
                    Found = table.Column<string>(type: "TEXT", nullable: true),
                    LogEntryId = table.Column<Guid>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Photos", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Photos_PhotoSpots_SpotId",
                        column: x => x.SpotId,
                        principalTable: "PhotoSpots",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateIndex(
                name: "IX_PhotoSpots_LawnId",
                table: "PhotoSpots",
                column: "LawnId");

            migrationBuilder.CreateIndex(
                name: "IX_Photos_LawnId",
                table: "Photos",
                column: "LawnId");

            migrationBuilder.CreateIndex(
                name: "IX_Photos_SpotId",
                table: "Photos",
                column: "SpotId");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "Photos");

            migrationBuilder.DropTable(
                name: "PhotoSpots");
        }
    }
}

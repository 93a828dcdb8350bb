@echo off
rem Starts Fettle; builds it on first use. Needs a JDK (17 or newer) and Maven.
setlocal
set "HERE=%~dp0"
set "JAR=%HERE%desk\target\fettle.jar"
set "ARCHIVE=%HERE%desk\target\fettle.jsa"
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java"
if not exist "%JAR%" (
  echo Building Fettle once; this takes a few minutes the first time ... 1>&2
  pushd "%HERE%"
  call mvn -B -q -ntp package -DskipTests -Dspotless.check.skip=true || (popd & echo The build failed. 1>&2 & exit /b 3)
  popd
)
if not exist "%ARCHIVE%" (
  "%JAVA%" -XX:ArchiveClassesAtExit="%ARCHIVE%" -cp "%JAR%" fettle.desk.cli.Training "%HERE%examples\dunlin-85" >nul 2>&1
)
set "QUICK="
for %%c in (forecast check new reckon --version --help) do if "%~1"=="%%c" set "QUICK=-XX:TieredStopAtLevel=1 -XX:+UseSerialGC"
"%JAVA%" %QUICK% -Xshare:auto -XX:SharedArchiveFile="%ARCHIVE%" -cp "%JAR%" fettle.desk.cli.Main %*
exit /b %ERRORLEVEL%

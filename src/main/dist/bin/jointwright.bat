@echo off
rem Starts Jointwright with the first JDK 25 or newer that this machine has.
setlocal enableextensions
set "least=25"
set "found="
set "lib=%~dp0..\lib"
if not exist "%lib%" (
  echo jointwright: the folder lib is missing beside bin; unpack or build the program again ^(mvn -q -DskipTests package^). 1>&2
  exit /b 70
)

if defined JAVA_HOME call :try "%JAVA_HOME%\bin\java.exe"
if not defined found for /f "delims=" %%j in ('where java.exe 2^>nul') do call :try "%%j"
for %%r in ("%ProgramFiles%\Eclipse Adoptium" "%ProgramFiles%\Java" "%ProgramFiles%\Microsoft" "%ProgramFiles%\Zulu" "%ProgramFiles%\Amazon Corretto" "%ProgramFiles%\BellSoft" "%LOCALAPPDATA%\Programs\Eclipse Adoptium" "%USERPROFILE%\.jdks" "%USERPROFILE%\scoop\apps") do (
  for /d %%h in ("%%~r\*") do call :try "%%~h\bin\java.exe"
)

if not defined found (
  echo jointwright: no JDK %least% or newer was found; install one ^(for example Temurin %least%^) or set JAVA_HOME to it. 1>&2
  exit /b 70
)
rem Short work is over before the second compiler would pay for itself; a window waits for it in vain while it opens.
set "compilers="
for %%c in (order prove schema sheet) do if "%~1"=="%%c" set "compilers=-XX:TieredStopAtLevel=1"
set "late=-XX:-AOTReplayTraining -XX:Tier4InvocationThreshold=50000"
set "late=%late% -XX:Tier4MinInvocationThreshold=6000 -XX:Tier4CompileThreshold=150000 -XX:Tier4BackEdgeThreshold=400000"
if "%~1"=="" set "compilers=%late%"
if "%~1"=="design" set "compilers=%late%"
rem Classes kept when the program was packaged; where they do not fit this JDK, it passes over them without a word.
set "kept="
if exist "%lib%\..\jointwright.aot" set kept=-XX:AOTCache="%lib%\..\jointwright.aot" -XX:ArchiveRelocationMode=0 -Xlog:disable
"%found%" -XX:+IgnoreUnrecognizedVMOptions -XX:+UnlockDiagnosticVMOptions -XX:-UsePerfData -XX:+UseSerialGC %compilers% %kept% -Djava.awt.headless=true --enable-native-access=ALL-UNNAMED -cp "%lib%\*" org.jointwright.Main %*
exit /b %ERRORLEVEL%

rem Sets "found" to %1 when nothing was found yet and it is a java of the least version.
:try
if defined found exit /b 0
if not exist "%~1" exit /b 0
set "version="
for /f "tokens=2 delims==" %%v in ('findstr /b "JAVA_VERSION=" "%~dp1..\release" 2^>nul') do set "version=%%~v"
if not defined version exit /b 0
for /f "tokens=1 delims=.+-" %%m in ("%version%") do if %%m geq %least% set "found=%~1"
exit /b 0
